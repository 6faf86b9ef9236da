using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads <c>vocabulary/**</c> and <c>methods/**</c>. What a file may hold does not hang on its name.</summary>
internal static class VocabularyReader
{
    public static Vocabulary Read(IReadOnlyList<Node?> vocabulary, IReadOnlyList<Node?> methods, ProblemList problems)
    {
        var files = vocabulary.Select(root => Fields.Of(root, problems)).OfType<Fields>().ToList();
        var places = Named(files, "places", place => place.Name, "place", problems, PlaceOf);
        var tools = Named(files, "tools", tool => tool.Name, "tool", problems, ToolOf);
        var datums = Named(files, "datums", datum => datum.Name, "datum", problems, DatumOf);
        var steps = files.SelectMany(file => file.Maps("steps")).Select(fields => StepOf(fields, datums)).OfType<DatumStep>().ToList();
        var disciplines = Named(files, "disciplines", discipline => discipline.Name, "discipline", problems, DisciplineOf);
        var readings = new ReadingKindReader(places, tools, datums);
        var kinds = Named(files, "kinds", kind => kind.Name, "kind", problems, fields => KindReader.Read(fields, readings, places));
        kinds = [.. kinds.Select((kind, order) => kind with { Order = order })];
        foreach (var (list, line) in new[] { ("kinds", "above"), ("datums", "of") })
        {
            files.SelectMany(file => file.Maps(list)).ToList()
                .ForEach(fields => Lookup.In(kinds, fields.Scalar(line), kind => kind.Name, "kind of part", problems));
        }

        files.ForEach(file => file.Done());
        var method = new MethodReader(kinds, new JobLayout(new Vocabulary(kinds, datums, tools, places, disciplines, [])));
        var read = methods.Select(root => Fields.Of(root, problems)).OfType<Fields>().Select(method.Read);
        return new Vocabulary(kinds, datums, tools, places, disciplines,
            Once(read.Select(method => (method, method.At)), method => method.Name, "method", problems), steps);
    }

    private static List<T> Named<T>(
        IReadOnlyList<Fields> files, string list, Func<T, string> nameOf, string what, ProblemList problems, Func<Fields, T> read)
        where T : class
    {
        var found = files.SelectMany(file => file.Maps(list)).Select(fields => (Thing: read(fields), Fields: fields)).ToList();
        found.ForEach(pair => pair.Fields.Done());
        return Once(found.Select(pair => (pair.Thing, pair.Fields.At)), nameOf, what, problems);
    }

    private static List<T> Once<T>(IEnumerable<(T Thing, At At)> found, Func<T, string> nameOf, string what, ProblemList problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var once = new List<T>();
        foreach (var (thing, at) in found)
        {
            if (seen.Add(Names.Fold(nameOf(thing))))
            {
                once.Add(thing);
            }
            else if (nameOf(thing).Length > 0)
            {
                problems.Add(at, Messages.DoubleName(what, nameOf(thing)));
            }
        }

        return once;
    }

    private static Place PlaceOf(Fields fields) => new(fields.Need("place"), fields.Text("letters") ?? "", SayOf(fields));

    private static Datum DatumOf(Fields fields) => new(fields.Need("datum"), fields.Need("of"), SayOf(fields));

    private static DatumStep? StepOf(Fields fields, List<Datum> datums)
    {
        var datum = Lookup.In(datums, fields.Scalar("datum"), d => d.Name, "datum", fields.Problems);
        var above = Lookup.In(datums, fields.Scalar("above"), d => d.Name, "datum", fields.Problems);
        var exactly = fields.Quantity("exactly", Measure.Length);
        fields.Done();
        return datum is not null && above is not null && exactly is { } step ? new DatumStep(datum.Name, step, above.Name) : null;
    }

    private static Tool ToolOf(Fields fields) =>
        new(fields.Need("tool"), SayOf(fields), MarksOf(fields.Map("marks")) ?? new Dictionary<Measure, Quantity>(),
            MarksOf(fields.Map("metric marks")));

    private static Dictionary<Measure, Quantity>? MarksOf(Fields? marks)
    {
        if (marks is null)
        {
            return null;
        }

        var read = new Dictionary<Measure, Quantity>();
        foreach (var entry in marks.All())
        {
            if (Lookup.Enum<Measure>(entry.Key, FormWords.Measures, "measure", marks.Problems) is { } measure
                && marks.Quantity(entry.Key.Text, measure) is { } mark)
            {
                read[measure] = mark;
            }
        }

        return read;
    }

    private static Discipline DisciplineOf(Fields fields) =>
        new(fields.Need("discipline"), SayOf(fields), fields.Words("ask"), [.. fields.Maps("families").Select(FamilyOf)]);

    private static CodeFamily FamilyOf(Fields fields)
    {
        var name = fields.Need("family");
        fields.Demand("tried with");
        var (inches, millimetres) =
            Lookup.Enum<(bool, bool)>(fields.Scalar("tried with"), FormWords.Units, "units", fields.Problems)
            ?? (true, true);
        var say = fields.Has("en") ? SayOf(fields) : new Words(name);
        fields.Done();
        return new CodeFamily(name, say, inches, millimetres);
    }

    /// <summary>Words that stand in lines of their own: <c>en:</c> and <c>es:</c>.</summary>
    internal static Words SayOf(Fields fields) => new(fields.Need("en"), fields.Text("es"));
}
