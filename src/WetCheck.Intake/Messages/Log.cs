namespace WetCheck.Intake;

/// <summary>Sentences about the log beside a job file.</summary>
internal static partial class Messages
{
    public static Message LogTorn() =>
        Message.Blanks("log-torn", "The log ends in the middle of an answer, so this one does not count. Give it once more with  wetcheck look");

    public static Message LogLine() =>
        Message.Blanks("log-line", "This line of the log is no answer, so it does not count. Give it once more with  wetcheck look");

    public static Message LogTime(string typed) =>
        Message.Blanks("log-time", $"\"{Short(typed)}\" is no date with a time. Write it like  2026-11-25T16:05:00-06:00");
}
