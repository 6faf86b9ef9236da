using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The codes of a book: which families, which editions it tells apart, what differs between two of them.</summary>
public static class CodeList
{
    private const string Indent = "          ";

    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(RuleBook book)
    {
        var phrases = new Phrases(book, Languages.English);
        var lines = new List<string>();
        foreach (var discipline in book.Vocabulary.Disciplines)
        {
            lines.Add(phrases.Of(discipline.Say).ToUpperInvariant());
            foreach (var family in discipline.Families.Select(family => family.Name))
            {
                var rules = book.Rules.Where(rule => Ranges(rule, discipline.Name).Any(range => range.Family == family)).ToList();
                var years = rules.SelectMany(rule => Ranges(rule, discipline.Name)).Where(range => range.Family == family)
                    .SelectMany(range => new[] { range.From, range.To + 1 }).OfType<int>().Distinct().Order()
                        .Select(year => year.ToString(CultureInfo.InvariantCulture)).ToList();
                var told = rules.Count == 0 ? "no rule speaks of it" : string.Join(", ", rules.Select(rule => rule.Number))
                    + (years.Count == 0 ? "" : $". Editions told apart at {phrases.List(years)}");
                lines.AddRange(Column.Wrap(told, $" {family}".PadRight(Indent.Length) + " "));
            }

            lines.Add("");
        }

        lines.Add("Two of them:  wetcheck rules code --compare IRC UPC");
        return string.Join('\n', lines) + "\n";
    }

    /// <summary>Rules that ask otherwise by the one family than by the other, each with what either asks.</summary>
    public static string Compare(RuleBook book, string one, string other)
    {
        var phrases = new Phrases(book, Languages.English);
        var both = book.Rules.OrderBy(rule => rule.Number)
            .Select(rule => (Rule: rule, One: Of(rule, one), Other: Of(rule, other))).ToList();
        var (alike, otherwise) = (both.Where(IsAlike).ToList(), both.Where(rule => !IsAlike(rule)).ToList());
        var lines = new List<string>(Column.Wrap(
            $"{one} against {other}: {Count(otherwise.Count)} ask otherwise, "
            + $"{Count(alike.Count(rule => rule.One.Count > 0))} ask the same, "
            + $"{Count(alike.Count(rule => rule.One.Count == 0))} go by neither."));
        foreach (var (rule, ofOne, ofOther) in otherwise)
        {
            lines.Add("");
            lines.AddRange(Column.Wrap(RuleText.For(rule, phrases).Name,
                Column.Numbered(rule.Number.ToString(CultureInfo.InvariantCulture))));
            lines.AddRange(Said(one, rule, ofOne));
            lines.AddRange(Said(other, rule, ofOther));
        }

        return string.Join('\n', lines) + "\n";

        // Of a rule that is for some codes only, whether the family is one of them differs too.
        bool IsAlike((Rule Rule, IReadOnlyList<RuleVersion> One, IReadOnlyList<RuleVersion> Other) of) =>
            of.One.SequenceEqual(of.Other) && Of(of.Rule.When, one) == Of(of.Rule.When, other);

        static string Count(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} rules");

        IEnumerable<string> Said(string family, Rule rule, IReadOnlyList<RuleVersion> versions) => (versions.Count == 0
                ? rule.Versions.Count == 0 && Of(rule.When, family) ? ["as it stands"] : (IEnumerable<string>)["asks nothing"]
                : versions.Select(version => Versions.Of(rule, version, book, phrases)))
            .SelectMany((said, i) => Column.Wrap(said, (i == 0 ? $"         {family} " : "").PadRight(Indent.Length + family.Length)));
    }

    /// <summary>What local changes made of a book, rule by rule, those that they added too.</summary>
    public static string Local(RuleBook book, RuleBook changed)
    {
        var phrases = new Phrases(changed, Languages.English);
        var lines = new List<string>();
        foreach (var rule in book.Rules.Concat(changed.Rules.Where(rule => book.Rule(rule.Id) is null)).OrderBy(rule => rule.Number))
        {
            var (before, after) = (Asks(book.Rule(rule.Id), book, "not in the book"), Asks(changed.Rule(rule.Id), changed, "switched off"));
            if (!before.SequenceEqual(after))
            {
                lines.AddRange(Column.Wrap(RuleText.For(rule, phrases).Name,
                    Column.Numbered(rule.Number.ToString(CultureInfo.InvariantCulture))));
                lines.AddRange(before.Except(after).SelectMany(said => Column.Wrap(said, "         was ")));
                lines.AddRange(after.Except(before).SelectMany(said => Column.Wrap(said, "         is  ")));
            }
        }

        return lines.Count == 0 ? "No local change.\n" : string.Join('\n', lines) + "\n";

        // What a rule asks of itself, where it bears no limit of a version, and what each version asks.
        List<string> Asks(Rule? rule, RuleBook of, string absent) => rule is null ? [absent] :
        [
            .. rule.Body is RuleBody.Require { Holds: { } holds } && rule.Versions.All(version => version.Limit is null)
                ? [Sentence.Closed(Sentence.Capital(Conditions.Say(holds, null, of, phrases)))]
                : Array.Empty<string>(),
            .. rule.Versions.Select(version => Versions.Of(rule, version, of, phrases)),
        ];
    }

    private static IReadOnlyList<RuleVersion> Of(Rule rule, string family) =>
        [.. rule.Versions.Where(version => Of(version.When, family) && Codes(version.When).Any())];

    /// <summary>A condition that speaks of no code holds for every family.</summary>
    private static bool Of(Condition? when, string family) =>
        Codes(when) is var codes
        && (!codes.Any() || codes.Any(code => code.OneOf.Any(range => range.Family == family)));

    private static IEnumerable<Condition.CodeIs> Codes(Condition? when) => when?.Parts().OfType<Condition.CodeIs>() ?? [];

    private static IEnumerable<CodeRange> Ranges(Rule rule, string discipline) =>
        rule.Conditions().OfType<Condition.CodeIs>().Where(code => code.Discipline == discipline).SelectMany(code => code.OneOf);
}
