using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// A job with the answers of its log. Each adds a reading to the facts of its line, or takes the place of those before
/// it.
/// </summary>
public static class JobLog
{
    /// <summary>The job with all answers that can be read, in the order of the file, which is the order in which they were kept.</summary>
    public static (Job Job, IReadOnlyList<Problem> Problems) Apply(Job job, Vocabulary vocabulary, IReadOnlyList<LoggedAnswer> log)
    {
        var ofFile = job;
        var problems = new List<Problem>();
        foreach (var answer in log)
        {
            var (next, told) = Add(job, vocabulary, answer);
            problems.AddRange(told);
            job = next ?? job;
        }

        return (AtLaterStop(ofFile, job), problems);
    }

    /// <summary>The stop is moved on in the job file or by an answer. The work goes one way only, so of the two the later counts.</summary>
    public static Job AtLaterStop(Job ofFile, Job now) => now.Method is { } method && ofFile.Stage is { } stage
        && method.IndexOf(stage) > (now.Stage is { } said ? method.IndexOf(said) : -1) ? now with { Stage = stage } : now;

    /// <summary>The job with one more answer; none where it can't be read.</summary>
    public static (Job? Job, IReadOnlyList<Problem> Problems) Add(Job job, Vocabulary vocabulary, LoggedAnswer answer)
    {
        var problems = new ProblemList();
        var layout = new JobLayout(vocabulary);
        var draft = JobChange.Recalled(job, layout);
        var tool = vocabulary.Tools.FirstOrDefault(tool => answer.Tool is { } said && Names.Same(tool.Name, said));
        var by = new Provenance(tool, answer.By, LogClock.Counted(answer, job), IsOwn: tool is not null);
        var said = new Draft { Header = draft.Header with { By = by } };
        var member = MemberPath.Of(answer.Path, layout);
        var isGone = member is not null && Names.Same(answer.Read, "none");
        if (!isGone)
        {
            var read = new ScalarNode(answer.Read.Trim(), Quoted: false, answer.At.Line, Straight: true, answer.At);
            JobChange.Write(member?.Line ?? answer.Path, read, said, layout, problems);
        }

        foreach (var (kind, notes) in said.All)
        {
            Doubt(vocabulary.Kind(kind)!, notes, problems);
        }

        if (member is not null && Messages.OfMember(member, draft, said, isGone) is { } odd)
        {
            problems.Add(answer.At, odd);
        }

        var told = problems.InOrder()
            .Select(problem => problem with { Typed = answer.Line.Length > 0 ? answer.Line : answer.Read }).ToList();
        if (told.Exists(problem => problem.Effect != Effect.Asked))
        {
            return (null, told);
        }

        draft.Header = said.Header with { By = draft.Header.By };
        if (member is not null)
        {
            Merge.Member(draft, said, member, isGone, answer.Replaces is not null);
        }
        else if (layout.Find(answer.Path, out _) is var (section, line))
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
