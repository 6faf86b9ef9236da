using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>A quantity of a rule, and the rule with that quantity moved by its smallest step.</summary>
internal sealed record MovedLimit(Rule Rule, Quantity Number, At At, Func<Quantity, Rule> With)
{
    public static IEnumerable<MovedLimit> Of(Rule rule)
    {
        foreach (var version in rule.Versions.Where(version => version.Limit is not null))
        {
            yield return new MovedLimit(rule, version.Limit!.Value, version.At,
                number => rule with { Versions = [.. rule.Versions.Select(one => one == version ? one with { Limit = number } : one)] });
        }

        foreach (var test in rule.Conditions().OfType<Condition.Compare>().Where(test => test.To is Operand.Fixed))
        {
            var to = (Operand.Fixed)test.To;
            yield return new MovedLimit(rule, to.Quantity, test.At,
                number => Replaced(rule, test, test with { To = to with { Quantity = number } }));
        }
    }

    public Rule Up => With(Number with { Value = Number.Value + Step });

    public Rule Down => With(Number with { Value = Number.Value - Step });

    /// <summary>A 64th, a millimetre, a square inch, a 64th over a foot, 0.1 %, a minute, a degree Fahrenheit, one.</summary>
    private Rational Step => Number.Measure switch
    {
        Measure.Length => Number.Typed.IsMetric ? Unit.Millimetre.Factor : new Rational(1, 64),
        Measure.Slope => Number.Typed == Unit.InchPerFoot ? new Rational(1, 768) : new Rational(1, 1000),
        Measure.Percent => new Rational(1, 10),
        _ => 1,
    };

    private static Rule Replaced(Rule rule, Condition old, Condition now) => rule with
    {
        When = Replaced(rule.When, old, now),
        Body = rule.Body is RuleBody.Require require ? new RuleBody.Require(Replaced(require.Holds, old, now)) : rule.Body,
        Versions = [.. rule.Versions.Select(version =>
            version with { When = Replaced(version.When, old, now), Require = Replaced(version.Require, old, now) })],
    };

    private static Condition? Replaced(Condition? condition, Condition old, Condition now) => condition switch
    {
        _ when ReferenceEquals(condition, old) => now,
        Condition.All all => all with { Of = [.. all.Of.Select(one => Replaced(one, old, now)!)] },
        Condition.AnyOf any => any with { Of = [.. any.Of.Select(one => Replaced(one, old, now)!)] },
        Condition.Some some => some with { Meets = Replaced(some.Meets, old, now)! },
        Condition.Each each => each with { Meets = Replaced(each.Meets, old, now)! },
        _ => condition,
    };
}
