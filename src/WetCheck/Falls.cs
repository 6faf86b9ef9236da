using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck;

/// <summary>From a job to the falls of its floor, held against the limits of the book.</summary>
public static class Falls
{
    public static PanReport Of(Job job, RuleBook book) => PanFalls.Of(job, book, Derive.From(job, book.Vocabulary));
}
