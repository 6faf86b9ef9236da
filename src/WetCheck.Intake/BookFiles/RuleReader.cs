using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads one rule file.</summary>
internal sealed class RuleReader(Vocabulary vocabulary, ProblemList problems)
{
    private static readonly string[] s_bodies = ["require", "conclude", "caution", "note"];

    /// <param name="path">The rule's id by its path: <c>liner/turn-up</c>.</param>
    public Rule? Read(string path, Node root)
    {
        if (Fields.Of(root, problems) is not { } fields)
        {
            return null;
        }

        if (fields.Need("rule") is { Length: > 0 } id && id != path)
        {
            problems.Add(fields.AtOf("rule"), Messages.PathDiffers(id, path));
        }

        fields.Demand("part");
        var number = Number(fields);
        var part = Lookup.In(vocabulary.Kinds, fields.Scalar("part"), kind => kind.Name, "kind of part", problems);
        if (part is null)
        {
            return null;
        }

        var conditions = new ConditionReader(vocabulary, problems);
        var when = fields.Has("when") ? conditions.Read(fields.Take("when"), part) : null;
        var body = Body(fields, part, out var bodyWord);
        var versions = new VersionReader(conditions, part).Read(fields, body);
        var owed = bodyWord == "require";
        var rule = new Rule(
            path,
            number,
            part,
            when,
            body,
            versions,
            [.. fields.Texts("row").Select(row => row.Text)],
            fields.Text("yields_to"),
            Severity(fields, owed),
            WorkOf(fields, owed),
            RuleTextsReader.Read(fields, bodyWord, body is RuleBody.Require),
            fields.AtOf("rule"));
        fields.Done();
        return rule;
    }

    private int Number(Fields fields)
    {
        fields.Demand("number");
        return RuleNumber.Read(fields.Scalar("number"), problems);
    }

    private RuleBody Body(Fields fields, PartKind part, out string word)
    {
        var found = s_bodies.Where(fields.Has).ToList();
        var isVersioned = found.Count == 0 && fields.Maps("versions").Any(version => version.Has("require"));
        if (found.Count != 1 && !isVersioned)
        {
            problems.Add(fields.At, Messages.OneBody(found));
        }

        word = found.Count == 0 ? "require" : found[0];
        return word switch
        {
            "conclude" => Conclude(fields, part),
            "caution" => Marked(fields, word, new RuleBody.Caution(Stop(fields, "from"), Stop(fields, "until", isNeeded: true) ?? "")),
            "note" => Marked(fields, word, new RuleBody.Note()),
            _ => new RuleBody.Require(fields.Has("require")
                ? new ConditionReader(vocabulary, problems, Limit: true).Read(fields.Take("require"), part)
                : null),
        };
    }

    /// <summary>The marker line of a caution or note says <c>yes</c>.</summary>
    private RuleBody Marked(Fields fields, string word, RuleBody body)
    {
        if (!fields.Yes(word) && fields.Scalar(word) is { } said && Names.Same(said.Text, "no"))
        {
            problems.Add(said.At, Messages.OneBody([]));
        }

        return body;
    }

    private RuleBody Conclude(Fields fields, PartKind part)
    {
        var name = fields.Scalar("conclude");
        var reading = name is null ? null : Conclusion(part, name);
        var climbs = new List<string>();
        foreach (var above in fields.Texts("climbs"))
        {
            if (Lookup.In(vocabulary.Kinds, above, kind => kind.Name, "kind of part", problems) is { } kind
                && (reading is null || Conclusion(kind, above with { Text = reading.Name }) is not null))
            {
                climbs.Add(kind.Name);
            }
        }

        return reading is null ? new RuleBody.Require(null) : new RuleBody.Conclude(reading, climbs);
    }

    private ReadingKind? Conclusion(PartKind kind, ScalarNode name)
    {
        var reading = kind.Readings.FirstOrDefault(reading => reading.Is == Form.Conclusion && Names.Same(reading.Name, name.Text));
        if (reading is null)
        {
            problems.Add(name.At, Messages.NoConclusion(kind.Name, name.Text));
        }

        return reading;
    }

    private string? Stop(Fields fields, string line, bool isNeeded = false)
    {
        if (isNeeded)
        {
            fields.Demand(line);
        }

        if (fields.Scalar(line) is not { } name)
        {
            return null;
        }

        var stops = vocabulary.Methods.SelectMany(method => method.Stops).Select(stop => stop.Name).Distinct().ToList();
        var found = Names.Find(name.Text, stops);
        if (found is null)
        {
            problems.Add(name.At, Messages.StopUnknown(name.Text, stops));
        }

        return found;
    }

    private Severity Severity(Fields fields, bool isNeeded)
    {
        if (isNeeded)
        {
            fields.Demand("severity");
        }

        return Lookup.Enum<Severity>(fields.Scalar("severity"), FormWords.Severities, "severity", problems) ?? Model.Severity.TouchUp;
    }

    private string WorkOf(Fields fields, bool isNeeded)
    {
        if (isNeeded)
        {
            fields.Demand("work of");
        }

        return Lookup.In(FormWords.Trades, fields.Scalar("work of"), trade => trade, "trade", problems) ?? "";
    }
}
