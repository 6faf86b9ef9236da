using WetCheck.Geometry;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>A case with its job as a rule meets it, read once however often it is judged.</summary>
/// <param name="Job">Null where it can't be read.</param>
/// <param name="Unread">What can't be read of it, a line each.</param>
internal sealed record ReadCase(RuleCase Case, Job? Job, IReadOnlyList<PartState> States, IReadOnlyList<string> Unread)
{
    public static ReadCase Read(RuleCase one, Vocabulary vocabulary)
    {
        var (job, problems) = JobReader.Read(one.At.File, one.Job, vocabulary);
        var unread = problems.Where(problem => problem.Effect != Effect.Asked)
            .Select(problem => $"the job can't be read: {problem.Typed.Trim()}: {problem.Say}").ToList();
        return new ReadCase(one, job, job is null || unread.Count > 0 ? [] : Derive.From(job, vocabulary), unread);
    }
}
