using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Refuses rules whose conclusions wait for each other, and conclusions that no rule fills.</summary>
internal static class ConclusionOrder
{
    public static void Check(IReadOnlyList<Rule> rules, ProblemList problems)
    {
        var fills = rules.ToDictionary(rule => rule.Id, Fills, StringComparer.Ordinal);
        var filled = fills.Values.SelectMany(filled => filled).ToHashSet();
        var waits = new Dictionary<string, List<Rule>>(StringComparer.Ordinal);
        foreach (var rule in rules)
        {
            var asked = Asks(rule).ToList();
            foreach (var (kind, reading, at) in asked.Where(ask => !filled.Contains((ask.Kind, ask.Reading))))
            {
                problems.Add(at, Messages.NothingConcludes(reading));
            }

            var needs = asked.Select(ask => (ask.Kind, ask.Reading)).ToHashSet();
            waits[rule.Id] = [.. rules.Where(other => fills[other.Id].Overlaps(needs))];
        }

        var settled = new HashSet<string>(StringComparer.Ordinal);
        foreach (var rule in rules.Where(rule => rule.Body is RuleBody.Conclude))
        {
            if (Cycle(rule, waits, [], settled) is { } cycle)
            {
                problems.Add(cycle[0].At, Messages.Cycle([.. cycle.Select(one => $"{one.Id} ({one.At.File}:{one.At.Line})")]));
                return;
            }
        }
    }

    private static HashSet<(string Kind, string Reading)> Fills(Rule rule) => rule.Body is RuleBody.Conclude conclude
        ? [.. conclude.Climbs.Prepend(rule.Part.Name).Select(kind => (kind, conclude.Reading.Name))]
        : [];

    /// <summary>Conclusions that a rule reads, each with the kind of part it is read of.</summary>
    private static IEnumerable<(string Kind, string Reading, At At)> Asks(Rule rule)
    {
        var roots = new[] { rule.When, (rule.Body as RuleBody.Require)?.Holds }
            .Concat(rule.Versions.SelectMany(version => new[] { version.When, version.Require }));
        return roots.OfType<Condition>().SelectMany(root => Asks(root, rule.Part.Name));
    }

    private static IEnumerable<(string, string, At)> Asks(Condition condition, string self) => condition switch
    {
        Condition.All all => all.Of.SelectMany(one => Asks(one, self)),
        Condition.AnyOf any => any.Of.SelectMany(one => Asks(one, self)),
        Condition.Some some => Asks(some.Meets, some.Of.Kind ?? self),
        Condition.Each each => Asks(each.Meets, each.Of.Kind ?? self),
        Condition.Is { Path: { Reading.Is: Form.Conclusion } path } test => [(path.Kind ?? self, path.Reading.Name, test.At)],
        _ => [],
    };

    private static List<Rule>? Cycle(Rule rule, Dictionary<string, List<Rule>> waits, List<Rule> path, HashSet<string> settled)
    {
        var start = path.IndexOf(rule);
        if (start >= 0)
        {
            return [.. path[start..], rule];
        }

        if (settled.Contains(rule.Id))
        {
            return null;
        }

        path.Add(rule);
        foreach (var next in waits[rule.Id])
        {
            if (Cycle(next, waits, path, settled) is { } cycle)
            {
                return cycle;
            }
        }

        path.RemoveAt(path.Count - 1);
        settled.Add(rule.Id);
        return null;
    }
}
