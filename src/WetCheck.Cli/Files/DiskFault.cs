namespace WetCheck.Cli.Files;

/// <summary>Why a file can't be written, in words.</summary>
internal static class DiskFault
{
    /// <summary>
    /// Numbers of Linux and of Windows: no room left, past the size a system allows, past the share of one person.
    /// </summary>
    private static readonly int[] s_full = [28, 27, 122, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    /// <summary>The last: what .NET makes of a file that has reached the size a system allows.</summary>
    public static bool Is(Exception fault) =>
        fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;

    public static bool IsFull(Exception fault) => fault is ArgumentOutOfRangeException || s_full.Contains(fault.HResult);

    public static string Say(Exception fault) => IsFull(fault)
        ? "The disk is full. What was there is as it was; make room and run again."
        : "Is the folder there, and may you write in it?";
}
