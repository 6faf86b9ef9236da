using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads a job file. A value that can't be read counts as blank and the rest is read; only a broken shape stops.</summary>
public static class JobReader
{
    /// <summary>The job, or none where the shape of the file is broken; problems in file order.</summary>
    /// <param name="file">The file's name, for people.</param>
    public static (Job? Job, IReadOnlyList<Problem> Problems) Read(string file, string text, Vocabulary vocabulary)
    {
        var problems = new ProblemList();
        var source = new SourceText(file, text);
        switch (Document.Read(source, problems))
        {
            case MapNode map:
                var job = Read(map, source, vocabulary, problems);
                return (problems.Stops ? null : job, problems.InOrder());
            case null when problems.Stops:
                return (null, problems.InOrder());
            case null:
                problems.Add(source.Place(1, 1), Messages.NothingWritten());
                return (null, problems.InOrder());
            case var other:
                problems.Add(other.At, Messages.NoJob());
                return (null, problems.InOrder());
        }
    }

    private static Job Read(MapNode map, SourceText source, Vocabulary vocabulary, ProblemList problems)
    {
        var layout = new JobLayout(vocabulary);
        var draft = new Draft();
        var (header, sections) = Sorted(map, layout, problems);
        foreach (var (key, entry) in header)
        {
            draft.Where[key] = entry.Key.At;
        }

        draft.Header = new HeaderReader(vocabulary, problems).Read(header, new Header { Name = NameOf(source.File) });
        var lone = new LoneNumbers();
        var reader = Sections(layout, draft, lone, problems);
        foreach (var (section, entry) in sections)
        {
            reader.Read(section, entry);
        }

        lone.Tell(header.TryGetValue("units", out var units) ? units.Key.At : null, problems);
        var job = Assembly.Make(draft, layout, source.File);
        Questions.Ask(job, draft, vocabulary, problems);
        return job;
    }

    internal static SectionReader Sections(JobLayout layout, Draft draft, LoneNumbers lone, ProblemList problems)
    {
        var vocabulary = layout.Vocabulary;
        var answers = new AnswerReader(vocabulary, draft.Header.By, problems);
        var parts = new PartLines(vocabulary, draft, new ValueReader(vocabulary, draft.Header.Lone, problems, lone), problems);
        var lines = new LineReader(draft, answers, parts, new ListLines(vocabulary, draft, parts, problems), problems);
        return new SectionReader(layout, draft, lines, problems);
    }

    private static (Dictionary<string, NamedNode> Header, List<(Section, NamedNode)> Sections) Sorted(MapNode map,
        JobLayout layout, ProblemList problems)
    {
        var known = new Dictionary<string, NamedNode>(StringComparer.Ordinal);
        var twice = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in map.Entries)
        {
            var name = HeaderReader.Find(entry.Key.Text, layout.Vocabulary) ?? layout.Find(entry.Key.Text)?.Name;
            if (name is null)
            {
                problems.Add(entry.Key.At, Unknown(entry, layout));
            }
            else if (!known.TryAdd(name, entry))
            {
                problems.Add(entry.Key.At, Messages.Twice(entry.Key.Text, known[name].Key.At.Line));
                twice.Add(name);
            }
        }

        var read = known.Where(pair => !twice.Contains(pair.Key)).ToList();
        return (
            read.Where(pair => layout.Find(pair.Key) is null).ToDictionary(StringComparer.Ordinal),
            [.. read.Where(pair => layout.Find(pair.Key) is not null).Select(pair => (layout.Find(pair.Key)!, pair.Value))]);
    }

    private static Message Unknown(NamedNode entry, JobLayout layout)
    {
        var known = HeaderReader.Keys(layout.Vocabulary).Concat(layout.Sections.Select(section => section.Name)).ToList();
        var within =
            layout.Sections.FirstOrDefault(section =>
            section.Find(entry.Key.Text, layout.Vocabulary) is Line.OfReading or Line.OfKind);
        return Names.Nearest(entry.Key.Text, known) is null && within is not null
            ? Messages.StandsBelow(entry.Key.Text, within.Name)
            : Messages.UnknownSection(entry.Key.Text, known);
    }

    /// <summary>A job without a name goes by that of its file.</summary>
    private static string NameOf(string file)
    {
        var name = file[(file.LastIndexOfAny(['/', '\\']) + 1)..];
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        return dot > 0 ? name[..dot] : name;
    }
}
