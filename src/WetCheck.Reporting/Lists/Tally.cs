using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>How many entries there are of each result.</summary>
public sealed record Tally(int Ok, int NotHere, int Later, int ToCheck, int ReadAgain, int HiddenNow, int Corrections, int OnPaper)
{
    internal static Tally Of(Walk walk)
    {
        int Count(Result result) => walk.Entries.Count(entry => entry.Result == result);
        return new Tally(
            Count(Result.Ok),
            Count(Result.NotHere),
            Count(Result.Later),
            Count(Result.ToCheck),
            Count(Result.ReadAgain),
            Count(Result.HiddenNow),
            walk.ToFix.Count(),
            walk.ToFix.Count(entry => entry.Paper == Paper.Correction));
    }

    /// <summary>"31 OK, 12 not on this job, 20 later, 5 to check"; what there is none of falls away, OK never does.</summary>
    internal string Line(Phrases phrases) => string.Join(", ", new[]
        {
            ("ok", Ok), ("not-here", NotHere), ("later", Later), ("to-check", ToCheck), ("read-again", ReadAgain), ("hidden", HiddenNow),
        }
        .Where(count => count.Item2 > 0 || count.Item1 == "ok")
        .Select(count => phrases.Count("count." + count.Item1, count.Item2)));
}
