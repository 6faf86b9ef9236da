using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Both sides of a check that comes out differently by the code, or by a fact nobody has looked at.</summary>
internal static class Sides
{
    /// <summary>True where sides that can be told apart come to different ends, or ask for different limits.</summary>
    public static bool Differ(Check check, Telling telling) => Told(check, telling) is { Count: > 1 } groups && AreApart(groups);

    /// <summary>"IRC and IPC: OK. UPC asks 1024 sq in or more."</summary>
    public static string Say(Check check, Telling telling)
    {
        var (phrases, groups) = (telling.Phrases, Told(check, telling));
        return string.Join(' ', groups.Select(group =>
        {
            var names = Families(group, groups);
            var label = ("codes", phrases.List(names));
            return Sentence.Closed(Sentence.Capital(group.Outcome switch
            {
                Outcome.Ok => phrases.Say(Phrase.Look.SideOk, label),
                Outcome.NotHere => phrases.Say(Phrase.Look.SideNone, label),
                _ => phrases.Say(names.Count > 1 ? Phrase.Look.SidesAsk : Phrase.Look.SideAsks, label, ("limit", group.Brief)),
            }));
        }));
    }

    /// <summary>By their codes; where one code has several sides by what else decides, or by both.</summary>
    private static List<SideGroup> Told(Check check, Telling telling)
    {
        var ways = Enum.GetValues<LabelBy>().Select(by => Grouped(check, by, telling)).ToList();
        return ways.Find(AreApart) ?? ways[0];
    }

    private static bool AreApart(List<SideGroup> groups) =>
        groups.SelectMany(group => group.Names).GroupBy(name => name).All(same => same.Count() == 1);

    private static List<SideGroup> Grouped(Check check, LabelBy by, Telling telling)
    {
        var groups = new List<SideGroup>();
        foreach (var side in check.Sides)
        {
            var outcome = side.Outcome == Outcome.Open ? Outcome.Correction : side.Outcome;
            var test = Evidence.Deciding(side);
            var limit = outcome is Outcome.Ok or Outcome.NotHere || test is null ? "" : Asked(test, Limit.Own(test, telling));
            var group = groups.Find(g => g.Outcome == outcome && g.Limit == limit);
            if (group is null)
            {
                // What the limit is taken from is said once.
                var brief = limit.Length > 0 && groups.Any(g => g.Limit.Length > 0) ? Asked(test!, Limit.Amount(test!, telling)) : limit;
                groups.Add(group = new SideGroup(outcome, limit, brief, []));
            }

            group.Add(Labels(side, by, telling));
        }

        return groups;
    }

    /// <summary>Sides may ask for different things: a number that was worked out bears its name.</summary>
    private static string Asked(Measured test, string limit) =>
        test.Fact is { Kind.Derived: true } fact ? $"{Naming.Reading(fact.Kind)} {limit}" : limit;

    /// <summary>Its codes; without one, or where they don't tell it from another, what else its versions are for.</summary>
    private static List<SideLabel> Labels(Side side, LabelBy by, Telling telling)
    {
        if (by == LabelBy.Code && side.Codes.Count > 0)
        {
            return [.. side.Codes.Select(code => new SideLabel(Naming.Code(code, telling.Phrases), code.Family))];
        }

        var whens = side.Versions.Select(version => version.When).OfType<Condition>()
            .Select(when => by == LabelBy.Fact ? BesideCode(when) : when).OfType<Condition>()
            .Select(when => new SideLabel(Conditions.Say(when, null, telling.Walk.Book, telling.Phrases), null))
            .ToList();
        return whens.Count > 0 ? whens : [new SideLabel(telling.Phrases[Phrase.Look.Otherwise], null)];
    }

    /// <summary>What a version asks beside its code; null where that is nothing.</summary>
    private static Condition? BesideCode(Condition when) => when switch
    {
        Condition.CodeIs => null,
        Condition.All all =>
            all.Of.Where(of => of is not Condition.CodeIs).ToList() is { Count: > 0 } others ? others is [var only]
            ? only : all with { Of = others } : null,
        _ => when,
    };

    /// <summary>A family of which every edition asks the same goes by its bare name.</summary>
    private static List<string> Families(SideGroup group, List<SideGroup> all)
    {
        var split = all.Where(other => other != group).SelectMany(other => other.Labels).Select(label => label.Family).ToHashSet();
        return [.. group.Labels
            .Select(label => label.Family is { } family && !split.Contains(family)
                && group.Labels.Count(other => other.Family == family) > 1 ? family : label.Name)
            .Distinct()];
    }
}

/// <summary>What tells one side from another.</summary>
internal enum LabelBy { Code, Fact, Both }

/// <summary>Sides that come to the same.</summary>
/// <param name="Brief">The limit as it is said.</param>
internal sealed record SideGroup(Outcome Outcome, string Limit, string Brief, List<SideLabel> Labels)
{
    public IEnumerable<string> Names => Labels.Select(label => label.Name);

    public void Add(IEnumerable<SideLabel> labels) => Labels.AddRange(labels.Where(label => !Labels.Contains(label)).ToList());
}

/// <param name="Family">Of a code; null for a side that something else decides.</param>
internal sealed record SideLabel(string Name, string? Family);
