using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Flow;

/// <summary>From a job to what its old work's look accounts for.</summary>
internal static class OldWorkReading
{
    public static TearoutReport Of(Job job, RuleBook book) => CauseReading.Of(book, Derive.From(job, book.Vocabulary));
}
