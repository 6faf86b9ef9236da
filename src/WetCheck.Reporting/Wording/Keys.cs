using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Results and deadlines by the keys that stand in JSON, in test files and in the words.</summary>
public static class Keys
{
    public static string Of(Result result) => result switch
    {
        Result.Correction => "correction",
        Result.ReadAgain => "read-again",
        Result.ToCheck => "to-check",
        Result.HiddenNow => "hidden",
        Result.Later => "later",
        Result.Ok => "ok",
        Result.NotHere => "not-here",
        Result.Caution => "caution",
        _ => "note",
    };

    public static string Of(Severity severity) => severity switch
    {
        Severity.Stop => "stop",
        Severity.BeforeCover => "before-cover",
        Severity.BeforeSignOff => "before-sign-off",
        _ => "touch-up",
    };

    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.NotReady => "not-ready",
        Verdict.Unfinished => "unfinished",
        _ => "nothing-owed",
    };

    /// <summary>Empty for <see cref="Paper.None"/>.</summary>
    public static string Of(Paper paper) => paper switch
    {
        Paper.Correction => "on-paper",
        Paper.Short => "short-on-paper",
        Paper.Good => "good-on-paper",
        _ => "",
    };

    public static string Of(SourceStatus status) => status switch
    {
        SourceStatus.Seen => "seen",
        SourceStatus.SecondHand => "second-hand",
        SourceStatus.FromMemory => "from memory",
        SourceStatus.Computed => "computed",
        _ => "practice",
    };
}
