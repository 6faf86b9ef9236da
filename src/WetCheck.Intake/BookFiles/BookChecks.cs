using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What can only be told with all rules at hand: numbers, sources, rules that name each other.</summary>
internal static class BookChecks
{
    public static void Run(RuleBook book, IReadOnlyList<RuleCase> cases, bool hasSources, ProblemList problems)
    {
        Numbers(book, problems);
        foreach (var rule in book.Rules)
        {
            if (rule.YieldsTo is { } other && book.Rule(other) is null)
            {
                problems.Add(rule.At, Messages.UnknownName("rule", other, [.. book.Rules.Select(known => known.Id)]));
            }

            foreach (var (row, at) in rule.Rows.Select(row => (row, rule.At)).Concat(rule.Versions.SelectMany(version => version.Rows.Select(row => (row, version.At)))))
            {
                if (hasSources && !book.Sources.ContainsKey(row))
                {
                    problems.Add(at, Messages.UnknownRow(row));
                }
            }
        }

        foreach (var (row, at) in book.Materials.Rows.Where(one => one.Row.Length > 0 && hasSources && !book.Sources.ContainsKey(one.Row)))
        {
            problems.Add(at, Messages.UnknownRow(row));
        }

        foreach (var orphan in cases.Where(known => book.Rule(known.Rule) is null).DistinctBy(known => known.Rule))
        {
            problems.Add(orphan.At, Messages.CaseWithoutRule(orphan.Rule));
        }

        ConclusionOrder.Check(book.Rules, problems);
    }

    private static void Numbers(RuleBook book, ProblemList problems)
    {
        var seen = new Dictionary<int, Rule>();
        foreach (var rule in book.Rules.Where(rule => rule.Number > 0))
        {
            if (!seen.TryAdd(rule.Number, rule))
            {
                problems.Add(rule.At, Messages.NumberTaken(rule.Number, seen[rule.Number].Id));
            }
            else if (book.RetiredNumbers.Contains(rule.Number))
            {
                problems.Add(rule.At, Messages.NumberRetired(rule.Number));
            }
        }
    }
}
