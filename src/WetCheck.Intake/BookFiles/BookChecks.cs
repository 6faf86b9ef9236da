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

            foreach (var (row, at) in rule.Rows.Select(row => (row, rule.At))
                .Concat(rule.Versions.SelectMany(version => version.Rows.Select(row => (row, version.At)))))
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

    /// <summary>What causes and tests name. Of the book itself only: a local change may switch a guard off.</summary>
    public static void Causes(RuleBook book, bool hasSources, ProblemList problems)
    {
        var named = book.Causes.SelectMany(cause => cause.Guards.Select(name => (name, cause.At)))
            .Concat(book.Opening.Gate.Select(name => (name, new At("opening.yaml", 1, 1))));
        foreach (var (name, at) in named.Where(one => book.Rule(one.name) is null))
        {
            problems.Add(at, Messages.UnknownName("rule", name, [.. book.Rules.Select(known => known.Id)]));
        }

        foreach (var (name, at) in book.Opening.Tests.SelectMany(test => test.Points.Select(name => (name, test.At)))
            .Where(one => book.Causes.All(cause => cause.Id != one.name)))
        {
            problems.Add(at, Messages.UnknownName("cause", name, [.. book.Causes.Select(known => known.Id)]));
        }

        var rows = book.Causes.SelectMany(cause => cause.Rows.Select(row => (row, cause.At)))
            .Concat(book.Opening.Tests.SelectMany(test => test.Rows.Select(row => (row, test.At))))
            .Concat(book.Opening.Expected.SelectMany(one => one.Rows.Select(row => (row, one.At))));
        foreach (var (row, at) in rows.Where(one => hasSources && !book.Sources.ContainsKey(one.row)))
        {
            problems.Add(at, Messages.UnknownRow(row));
        }
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
