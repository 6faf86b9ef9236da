using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Flow;

/// <summary>The whole way from a job file to the walk that every list is made from.</summary>
internal static class Inspection
{
    /// <param name="file">Name of the job file, for places in messages.</param>
    /// <returns>No walk where the shape of the file is broken; the problems then say how to mend it.</returns>
    public static (Walk? Walk, IReadOnlyList<Problem> Problems) Of(string file, string text, ReadyBook book)
    {
        var (job, problems) = JobReader.Read(file, text, book.Book.Vocabulary); // every value knows its line
        return job is null ? (null, problems) : (Of(job, problems, book), problems);
    }

    public static Walk Of(Job job, IReadOnlyList<Problem> problems, ReadyBook book)
    {
        var known = Derive.From(job, book.Book.Vocabulary);                     // arithmetic and bounds, no rules
        var findings = book.Compiled.Open(known).Findings;                      // NRules lives behind this call
        var walk = Results.Of(job, book.Book, findings, problems);              // stage, plans, folding, looks
        return walk with { Floor = FloorPlans.Of(job, known) };                 // for the plan that stands in the lists
    }
}
