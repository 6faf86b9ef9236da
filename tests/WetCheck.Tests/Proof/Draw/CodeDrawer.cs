using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Draws the code of each discipline, at the editions that rules tell apart, and the units that go with it.</summary>
internal sealed class CodeDrawer(RuleBook book, Wishes wishes, Dice dice)
{
    private const string NoStandard = "none";

    public IReadOnlyDictionary<string, CodeRange> Draw(out bool metric)
    {
        var wished = new Dictionary<string, CodeRange>(StringComparer.Ordinal);
        foreach (var (leaf, wanted) in wishes.OfType<Condition.CodeIs>().Where(one => one.Wanted && dice.Chance(0.95)))
        {
            wished.TryAdd(leaf.Discipline, dice.Pick(leaf.OneOf));
        }

        var families = book.Vocabulary.Disciplines.SelectMany(discipline => discipline.Families);
        var inMillimetres =
            wished.Values.Any(code =>
            families.Any(family => family.Name == code.Family && family.TriedInMillimetres && !family.TriedInInches));
        metric = dice.Chance(inMillimetres ? 0.9 : 0.25);
        var codes = new Dictionary<string, CodeRange>(StringComparer.Ordinal);
        foreach (var discipline in book.Vocabulary.Disciplines)
        {
            codes[discipline.Name] =
                wished.TryGetValue(discipline.Name, out var range) ? Edition(discipline, range)
                : Any(discipline, metric);
        }

        return codes;
    }

    /// <summary>The years at which some rule changes, and the year before.</summary>
    public static IReadOnlyList<int> Years(RuleBook book, string discipline, string family) => [.. book.Rules
        .SelectMany(rule => rule.Conditions())
        .OfType<Condition.CodeIs>().Where(test => test.Discipline == discipline)
        .SelectMany(test => test.OneOf).Where(range => range.Family == family)
        .SelectMany(range => new[] { range.From, range.From - 1, range.To, range.To + 1 })
        .OfType<int>().Distinct().Order()];

    private CodeRange Any(Discipline discipline, bool metric)
    {
        var tried = discipline.Families.Where(family => metric ? family.TriedInMillimetres : family.TriedInInches).ToList();
        var family = tried.Count > 0 && dice.Chance(0.85) ? dice.Pick(tried) : dice.Pick(discipline.Families);
        return Edition(discipline, new CodeRange(family.Name));
    }

    private CodeRange Edition(Discipline discipline, CodeRange range)
    {
        if (range.Family == NoStandard)
        {
            return range;
        }

        var years = Years(book, discipline.Name, range.Family).Where(year => !(year < range.From) && !(year > range.To)).ToList();
        var year = years.Count > 0 && dice.Chance(0.8) ? dice.Pick(years)
            : dice.Next(range.From ?? (range.To - 9) ?? 2000, range.To ?? (range.From + 9) ?? 2026);
        return range with { From = year, To = year };
    }
}
