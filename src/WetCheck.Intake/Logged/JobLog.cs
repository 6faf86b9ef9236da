using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A job with the answers of its log. Each adds a reading to the facts of its line, or takes the place of those before it.</summary>
public static class JobLog
{
    /// <summary>The job with all answers that can be read, in the order of the file; readings of one fact then go by their time.</summary>
    public static (Job Job, IReadOnlyList<Problem> Problems) Apply(Job job, Vocabulary vocabulary, IReadOnlyList<LoggedAnswer> log)
    {
        var problems = new List<Problem>();
        foreach (var answer in log)
        {
            var (next, told) = Add(job, vocabulary, answer);
            problems.AddRange(told);
            job = next ?? job;
        }

        return (job, problems);
    }

    /// <summary>The job with one more answer; none where it can't be read.</summary>
    public static (Job? Job, IReadOnlyList<Problem> Problems) Add(Job job, Vocabulary vocabulary, LoggedAnswer answer)
    {
        var problems = new ProblemList();
        var layout = new JobLayout(vocabulary);
        var draft = JobChange.Recalled(job, layout);
        var tool = vocabulary.Tools.FirstOrDefault(tool => answer.Tool is { } said && Names.Same(tool.Name, said));
        var by = new Provenance(tool, answer.By, answer.Time, IsOwn: tool is not null);
        var said = new Draft { Header = draft.Header with { By = by } };
        JobChange.Write(answer.Path, new ScalarNode(answer.Read.Trim(), Quoted: false, answer.At.Line, Straight: true, answer.At), said, layout, problems);
        foreach (var (kind, notes) in said.All)
        {
            Doubt(vocabulary.Kind(kind)!, notes, problems);
        }

        var told = problems.InOrder().Select(problem => problem with { Typed = answer.Line.Length > 0 ? answer.Line : answer.Read }).ToList();
        if (told.Exists(problem => problem.Effect != Effect.Asked))
        {
            return (null, told);
        }

        draft.Header = said.Header with { By = draft.Header.By };
        if (layout.Find(answer.Path, out _) is var (section, line))
        {
            Merge.Into(draft, said, section, line, vocabulary, answer.Replaces is not null);
        }

        return (Assembly.Make(draft, layout, job.File), told);
    }

    private static void Doubt(PartKind kind, PartNotes notes, ProblemList problems)
    {
        foreach (var (name, readings) in notes.Readings)
        {
            foreach (var reading in readings)
            {
                if (kind.Find(name) is { } asked && Belief.Doubt(reading, asked) is { } doubted)
                {
                    problems.Add(reading.At, Messages.HardToBelieve(doubted, reading.Typed));
                }
            }
        }
    }
}
