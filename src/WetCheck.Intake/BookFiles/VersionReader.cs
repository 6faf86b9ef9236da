using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads the versions of a rule: each with a condition, and a limit or a requirement of its own.</summary>
internal sealed class VersionReader(ConditionReader conditions, PartKind part)
{
    private ProblemList Problems => conditions.Problems;

    public IReadOnlyList<RuleVersion> Read(Fields rule, RuleBody body)
    {
        var limited = body is RuleBody.Require { Holds: { } holds }
            ? holds.Parts().OfType<Condition.Compare>().Where(compare => compare.To is Operand.Limit).ToList()
            : [];
        var measures = limited.Select(compare => compare.Path.Reading.Measure).OfType<Measure>().Distinct().ToList();
        var lines = rule.Maps("versions");
        if (measures.Count > 1)
        {
            var other = limited.First(compare => compare.Path.Reading.Measure != measures[0]);
            Problems.Add(other.At, Messages.OtherMeasure(limited[0].Path.Reading.Name, other.Path.Reading.Name));
        }

        if (measures.Count > 0 && !lines.Any(line => line.Has("limit")))
        {
            Problems.Add(limited[0].At, Messages.LimitWithoutVersions());
        }

        Measure? measure = measures.Count > 0 ? measures[0] : null;
        return [.. lines.Select(line => Version(line, measure))];
    }

    private RuleVersion Version(Fields fields, Measure? measure)
    {
        var when = fields.Has("when") ? conditions.Read(fields.Take("when"), part) : null;
        var own = fields.Has("require") ? conditions.Read(fields.Take("require"), part) : null;
        var hasLimit = fields.Has("limit");
        if (hasLimit && fields.Has("require"))
        {
            Problems.Add(fields.At, Messages.VersionWithBoth());
        }
        else if (!hasLimit && !fields.Has("require"))
        {
            Problems.Add(fields.At, measure is null ? Messages.Missing("require") : Messages.VersionWithoutLimit());
        }
        else if (hasLimit && measure is null)
        {
            Problems.Add(fields.AtOf("limit"), Messages.LimitUnused());
        }

        var limit = fields.Quantity("limit", measure);
        var version = new RuleVersion(when, limit, own, [.. fields.Texts("row").Select(row => row.Text)], fields.At);
        fields.Done();
        return version;
    }
}
