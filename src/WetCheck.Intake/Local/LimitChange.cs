using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Puts a local number in the place of those that a rule asks for. What decides between its versions stays as it is.</summary>
internal sealed class LimitChange(Rule rule, string row, ProblemList problems)
{
    /// <summary>The rule with the number; as it was, with a problem, where it can't be told which one is meant.</summary>
    /// <param name="instead">The number whose place it takes, where the rule asks for several.</param>
    public Rule To(ScalarNode limit, ScalarNode? instead)
    {
        var numbers = Numbers();
        if (numbers.Count == 0)
        {
            return Refused(limit.At, Messages.LocalNoLimit(rule.Id));
        }

        var measures = numbers.Select(number => number.Measure).Distinct().ToList();
        var measure = measures.Where(one => Notation.ReadQuantity(limit.Text, one).IsRead).DefaultIfEmpty(measures[0]).First();
        if (Fields.ReadQuantity(limit, measure, problems) is not { } now)
        {
            return rule;
        }

        var fit = numbers.Where(number => number.Measure == measure).Distinct().ToList();
        if (instead is not null)
        {
            if (Fields.ReadQuantity(instead, measure, problems) is not { } old)
            {
                return rule;
            }

            return fit.Contains(old) ? With(now, number => number == old) : Refused(instead.At, Messages.LocalLimitWhich(rule.Id, fit));
        }

        var areLimits = rule.Versions.Any(version => version.Limit is not null);
        return areLimits || fit.Count == 1 ? With(now, number => number.Measure == measure)
            : Refused(limit.At, Messages.LocalLimitWhich(rule.Id, fit));
    }

    /// <summary>All that the rule asks for in numbers: limits of its versions, or numbers in what it and they require.</summary>
    private List<Quantity> Numbers() => rule.Versions.Any(version => version.Limit is not null)
        ? [.. rule.Versions.Select(version => version.Limit).OfType<Quantity>()]
        : [.. new[] { (rule.Body as RuleBody.Require)?.Holds }.Concat(rule.Versions.Select(version => version.Require)).OfType<Condition>()
            .SelectMany(condition => condition.Parts()).OfType<Condition.Compare>()
            .Select(compare => compare.To).OfType<Operand.Fixed>().Select(number => number.Quantity)];

    private Rule With(Quantity now, Func<Quantity, bool> isMeant)
    {
        var holds = (rule.Body as RuleBody.Require)?.Holds;
        var changed = Put(holds, now, isMeant);
        return rule with
        {
            Body = rule.Body is RuleBody.Require ? new RuleBody.Require(changed) : rule.Body,
            Rows = changed == holds ? rule.Rows : [row],
            Versions = [.. rule.Versions.Select(version => Version(version, now, isMeant))],
        };
    }

    private RuleVersion Version(RuleVersion version, Quantity now, Func<Quantity, bool> isMeant)
    {
        var changed = version with
        {
            Limit = version.Limit is { } limit && isMeant(limit) ? now : version.Limit,
            Require = Put(version.Require, now, isMeant),
        };
        return changed == version ? version : changed with { Rows = [row] };
    }

    /// <summary>The same object where nothing in it is meant.</summary>
    private static Condition? Put(Condition? condition, Quantity now, Func<Quantity, bool> isMeant) => condition switch
    {
        _ when condition is null
            || !condition.Parts()
            .Any(part => part is Condition.Compare { To: Operand.Fixed number } && isMeant(number.Quantity)) =>
            condition,
        Condition.All all => all with { Of = [.. all.Of.Select(one => Put(one, now, isMeant)!)] },
        Condition.AnyOf any => any with { Of = [.. any.Of.Select(one => Put(one, now, isMeant)!)] },
        Condition.Some some => some with { Meets = Put(some.Meets, now, isMeant)! },
        Condition.Each each => each with { Meets = Put(each.Meets, now, isMeant)! },
        Condition.Compare { To: Operand.Fixed number } compare when isMeant(number.Quantity) => compare with
        {
            To = number with { Quantity = now },
        },
        _ => condition,
    };

    private Rule Refused(At at, Message message)
    {
        problems.Add(at, message);
        return rule;
    }
}
