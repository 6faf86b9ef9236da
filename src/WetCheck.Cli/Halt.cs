namespace WetCheck.Cli;

/// <summary>The program can't go on. Its message is for the person who typed, on standard error.</summary>
internal sealed class Halt(ExitCode code, string say) : RefusedException(
    code switch
    {
        ExitCode.TypedWrong => RefusedAs.TypedWrong,
        ExitCode.Unwritable => RefusedAs.Unwritable,
        _ => RefusedAs.Unreadable
    }, say);
