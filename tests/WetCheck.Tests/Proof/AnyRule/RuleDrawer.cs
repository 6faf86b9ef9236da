using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Draws rules that nobody would write and the grammar allows.</summary>
internal sealed class RuleDrawer(RuleBook book, Dice dice)
{
    private readonly Vocabulary _vocabulary = book.Vocabulary;
    private readonly IReadOnlyList<Limit> _limits = Studied.Of(book).Limits;

    public RuleBook Book(int rules) => book with
    {
        Rules = [.. Enumerable.Range(1, rules).Select(number => number <= rules / 8 ? Concluding(number) : Requiring(number))],
    };

    private Rule Requiring(int number)
    {
        var tests = new TestDrawer(_vocabulary, _limits, dice);
        var part = dice.Pick([.. _vocabulary.Kinds.Where(kind => kind.Readings.Any(reading => reading.Is != Form.Conclusion))]);
        var when = dice.Chance(0.5) ? Condition(tests, part, 1, null) : null;
        Measure? measure = dice.Chance(0.4) ? dice.Pick([Measure.Length, Measure.Length, Measure.Slope, Measure.Area]) : null;
        var holds = measure is not null || dice.Chance(0.6) ? Condition(tests, part, 2, measure) : null;
        if (holds is not null && !holds.Parts().Any(test => test is Condition.Compare { To: Operand.Limit }))
        {
            measure = null;
        }

        var versions =
            Enumerable.Range(0, dice.Next(holds is null || measure is not null ? 1 : 0, 3))
            .Select(_ => Version(tests, part, measure)).ToList();
        return Rule(number, part, when, new RuleBody.Require(holds), versions);
    }

    private RuleVersion Version(TestDrawer tests, PartKind part, Measure? measure)
    {
        var when = dice.Chance(0.8) ? Condition(tests, part, 1, null) : null;
        Quantity? limit =
            measure is { } of
            ? dice.Pick([.. _limits.Where(one => one.Number?.Measure == of).Select(one => one.Number!.Value)]) : null;
        return new RuleVersion(when, limit, limit is null ? Condition(tests, part, 1, null) : null, [], tests.At());
    }

    /// <summary>Fills a reading that other rules may look at; looks at none itself, so that none feeds itself.</summary>
    private Rule Concluding(int number)
    {
        var (part, reading) =
            dice.Pick([.. _vocabulary.Kinds.SelectMany(kind =>
            kind.Readings.Where(reading => reading.Is == Form.Conclusion).Select(reading => (kind, reading)))]);
        var climbs =
            _vocabulary.Kinds.Where(kind => kind != part && IsOn(part, kind.Name)
            && kind.Find(reading.Name) is not null).Select(kind => kind.Name);
        var tests = new TestDrawer(_vocabulary, _limits, dice);
        return Rule(number, part, Condition(tests, part, 2, null, conclusions: false), new RuleBody.Conclude(reading, [.. climbs]), []);
    }

    private Condition Condition(TestDrawer tests, PartKind kind, int depth, Measure? limit, bool conclusions = true, bool related = true)
    {
        return (depth == 0 ? 9 : dice.Next(0, 9)) switch
        {
            0 or 1 => new Condition.All(Several(), tests.At()),
            2 or 3 or 4 => new Condition.AnyOf(Several(), tests.At()),
            5 when related && Relation(kind) is { } of =>
                new Condition.Some(of.Relation,
                Condition(tests, of.Kind, depth - 1, null, conclusions, related: false), tests.At()),
            6 when related && Relation(kind) is { } of =>
                new Condition.Each(of.Relation,
                Condition(tests, of.Kind, depth - 1, null, conclusions, related: false), tests.At()),
            _ => tests.Of(kind, limit, conclusions),
        };

        List<Condition> Several() =>
            [.. Enumerable.Range(0, 2).Select(_ => Condition(tests, kind, depth - 1, limit, conclusions, related))];
    }

    private (Relation Relation, PartKind Kind)? Relation(PartKind kind)
    {
        if (kind.Many == Many.Ordered)
        {
            return (new Relation(dice.Chance(0.5) ? RelationTo.Behind : RelationTo.InFront), kind);
        }

        var below = _vocabulary.Kinds.Where(other => other != kind && IsOn(other, kind.Name)
            && other.Readings.Any(reading => reading.Is != Form.Conclusion && !reading.Derived)).ToList();
        return below.Count == 0 ? null : dice.Pick(below) is var picked ? (new Relation(RelationTo.Below, picked.Name), picked) : null;
    }

    private bool IsOn(PartKind kind, string above) => kind.Above is { } next && (next == above || IsOn(_vocabulary.Kind(next)!, above));

    private static Rule Rule(int number, PartKind part, Condition? when, RuleBody body, IReadOnlyList<RuleVersion> versions) => new(
        $"drawn/{number}", number, part, when, body, versions, [], null, Severity.Stop, "setter",
            new Dictionary<string, RuleTexts>(), new At("drawn.yaml", number, 1));
}
