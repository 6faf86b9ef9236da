using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads one file of <c>methods/</c>.</summary>
internal sealed class MethodReader(IReadOnlyList<PartKind> kinds, JobLayout layout)
{
    public Method Read(Fields fields)
    {
        var problems = fields.Problems;
        var stops = fields.Maps("stops").Select(StopOf).ToList();
        var layers = fields.Maps("layers").Select(layer => LayerOf(layer, stops)).ToList();
        var method = new Method(
            fields.Need("method"),
            VocabularyReader.SayOf(fields),
            stops,
            layers,
            Kinds(fields, "has"),
            Kinds(fields, "rules out"),
            Lines(fields, "asks"),
            Lines(fields, "asks after"),
            fields.At);
        if (stops.Count == 0)
        {
            problems.Add(fields.At, Messages.Missing("stops"));
        }

        fields.Done();
        return method;
    }

    private List<string> Kinds(Fields fields, string line) =>
        [.. fields.Texts(line)
            .Select(name => Lookup.In(kinds, name, kind => kind.Name, "kind of part", fields.Problems)?.Name)
            .OfType<string>()];

    private List<string> Lines(Fields fields, string name) =>
        [.. fields.Texts(name).Where(text => IsLine(text, fields.Problems)).Select(text => text.Text)];

    private bool IsLine(ScalarNode path, ProblemList problems)
    {
        if (layout.Find(path.Text, out _) is not null)
        {
            return true;
        }

        var lines = layout.Sections.SelectMany(section => section.Lines.Select(section.PathOf).Prepend(section.Name));
        problems.Add(path.At, Messages.UnknownName("line of the job file", path.Text, [.. lines]));
        return false;
    }

    private static Stop StopOf(Fields fields)
    {
        var stop = new Stop(fields.Need("stop"), VocabularyReader.SayOf(fields));
        fields.Done();
        return stop;
    }

    private static Layer LayerOf(Fields fields, List<Stop> stops)
    {
        fields.Demand("made");
        var layer = new Layer(
            fields.Need("layer"),
            VocabularyReader.SayOf(fields),
            Stop(fields, "made", stops) ?? "",
            Stop(fields, "hidden", stops),
            fields.Words("cover"));
        fields.Done();
        return layer;
    }

    private static string? Stop(Fields fields, string line, List<Stop> stops) =>
        Lookup.In(stops, fields.Scalar(line), stop => stop.Name, "stop", fields.Problems)?.Name;
}
