namespace WetCheck.Cli;

/// <summary>What the program hands back when it ends. Of several that hold, <see cref="ExitCodes.Weightiest"/>.</summary>
internal enum ExitCode
{
    /// <summary>Nothing owed that anyone can see now.</summary>
    NothingOwed = 0,

    /// <summary>A Correction, also on paper.</summary>
    ToFix = 1,

    /// <summary>The command was typed wrong.</summary>
    TypedWrong = 2,

    /// <summary>To check, Read again, or short on paper.</summary>
    Unfinished = 3,

    /// <summary>A file can't be read, or part of it.</summary>
    Unreadable = 4,

    /// <summary>A file can't be written.</summary>
    Unwritable = 5,
}

internal static class ExitCodes
{
    private static readonly ExitCode[] HeaviestFirst =
        [ExitCode.TypedWrong, ExitCode.Unreadable, ExitCode.Unwritable, ExitCode.ToFix, ExitCode.Unfinished, ExitCode.NothingOwed];

    public static ExitCode Weightiest(params ExitCode[] codes) => HeaviestFirst.First(codes.Contains);

    public static ExitCode Of(RoomState state) => state switch
    {
        RoomState.NotReady => ExitCode.ToFix,
        RoomState.Unfinished => ExitCode.Unfinished,
        _ => ExitCode.NothingOwed,
    };

    public static ExitCode Of(RefusedAs how) => how switch
    {
        RefusedAs.TypedWrong => ExitCode.TypedWrong,
        RefusedAs.Unwritable => ExitCode.Unwritable,
        _ => ExitCode.Unreadable,
    };
}
