using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A job as it would be with one line of its file written otherwise.</summary>
public static class JobChange
{
    /// <summary>What stands for the file's name where the line itself is at fault.</summary>
    public const string File = "--if";

    /// <summary>
    /// The job with a line put in the place of what it says: <c>curb.height: 5</c>, <c>nails.left: ?</c>, <c>stage:
    /// before bed</c>.
    /// </summary>
    /// <param name="line">A path of the job file, a colon, an answer as typed there; blank takes the answer away.</param>
    public static (Job? Job, Problem? Problem) Apply(Job job, Vocabulary vocabulary, string line)
    {
        var problems = new ProblemList();
        var source = new SourceText(File, line);
        problems.Open(source);
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0 || source.Lines.Count != 1)
        {
            problems.Add(source.Place(1, 1), Messages.ChangeForm(line));
            return (null, problems.InOrder()[0]);
        }

        var layout = new JobLayout(vocabulary);
        var draft = Recalled(job, layout);
        var answer = ValueOf(line, colon, source);
        Write(line[..colon].Trim(), answer, draft, layout, problems);
        return problems.InOrder() is [var first, ..] ? (null, first) : (Assembly.Make(draft, layout, job.File), null);
    }

    private static ScalarNode ValueOf(string line, int colon, SourceText source)
    {
        var start = colon + 1;
        while (start < line.Length && char.IsWhiteSpace(line[start]))
        {
            start++;
        }

        return new ScalarNode(line[start..].TrimEnd(), Quoted: false, 1, Straight: true, source.Place(1, start + 1));
    }

    internal static void Write(string path, ScalarNode answer, Draft draft, JobLayout layout, ProblemList problems)
    {
        var at = answer.At with { Column = 1 };
        var key = new ScalarNode(path, Quoted: false, 1, Straight: true, at);
        if (HeaderReader.Find(path, layout.Vocabulary) is { } name)
        {
            if (name == "local")
            {
                // The book is chosen by what the file says, before any line is changed.
                problems.Add(at, Messages.LocalByChange());
                return;
            }

            draft.Header = new HeaderReader(layout.Vocabulary, problems).Change(name, new NamedNode(key, answer), draft.Header);
            return;
        }

        var found = layout.Find(path, out var isSectionKnown);
        if (found is not var (section, line))
        {
            problems.Add(at,
                isSectionKnown
                ? Messages.UnknownQuestion(SectionOf(path), path[(SectionOf(path).Length + 1)..].Trim(),
                LinesOf(path, layout)) : Messages.UnknownSection(path, Paths(layout)));
            return;
        }

        var lone = new LoneNumbers();
        Forget(section, line, draft);
        var where = new Dictionary<string, At>(draft.Where);
        var sections = JobReader.Sections(layout, draft, lone, problems);
        if (line is null)
        {
            sections.Read(section, new NamedNode(key, answer));
        }
        else
        {
            sections.Read(section, new NamedNode(key, new MapNode([new NamedNode(key with { Text = line.Name }, answer)], at, at)));
        }

        foreach (var (known, place) in where)
        {
            draft.Where[known] = place;
        }

        lone.Tell(answer.At, problems);
    }

    private static void Forget(Section section, Line? line, Draft draft)
    {
        switch (line)
        {
            case Line.OfReading reading:
                draft.Of(reading.Kind).Readings.Remove(reading.Reading.Name);
                break;
            case Line.OfPlace place:
                draft.Forget(place.Kind, place.Place);
                break;
            case Line.OfKind kind:
                draft.Forget(kind.Kind);
                draft.Lists.Remove(kind.Kind.Name);
                break;
            case Line.Seen seen:
                draft.Lists.Remove(seen.Kind.Name);
                break;
            default:
                foreach (var kind in section.Kinds())
                {
                    draft.Forget(kind);
                    draft.Lists.Remove(kind.Name);
                }

                break;
        }
    }

    /// <summary>The draft that a job would have come from.</summary>
    internal static Draft Recalled(Job job, JobLayout layout)
    {
        var draft = new Draft
        {
            Header = new Header
            {
                Name = job.Name,
                Method = job.Method,
                Stage = job.Stage,
                Metric = job.Metric,
                Codes = job.Codes,
                ReadingsBy = job.ReadingsBy,
                Local = job.Local,
                Notes = job.Notes,
            },
        };
        var above = job.Parts.Where(below => below.Said == Tri.Yes).Select(below => below.Part.Above).ToHashSet();
        foreach (var part in job.Parts.Where(part => !part.Part.IsOther))
        {
            Recall(part, above.Contains(part.Part), draft);
        }

        foreach (var list in job.Lists.Where(list => list.Whole == Tri.Yes))
        {
            draft.Lists[list.Kind.Name] = (list.Whole, list.At);
        }

        foreach (var (path, at) in job.Where)
        {
            draft.Where[path] = at;
        }

        return draft;
    }

    /// <param name="holds">Parts that are there stand on it, which says that it is there too.</param>
    private static void Recall(JobPart part, bool holds, Draft draft)
    {
        if (part.Said == Tri.Unknown || (part.Said == Tri.Yes && part.Readings.Count == 0 && holds))
        {
            return;
        }

        var notes = draft.Of(part.Part.Kind, part.Part.Place, part.Part.Index);
        if (part.Said == Tri.No)
        {
            notes.None(part.At);
        }
        else
        {
            notes.There(part.At);
        }

        foreach (var (name, readings) in part.Readings)
        {
            foreach (var reading in readings)
            {
                notes.Add(name, reading);
            }
        }
    }

    private static string SectionOf(string path) => path.Split('.')[0];

    private static List<string> LinesOf(string path, JobLayout layout) =>
        [.. layout.Find(SectionOf(path))!.Lines.Select(line => line.Name)];

    private static List<string> Paths(JobLayout layout) => [.. layout.Sections.Select(section => section.Name)];
}
