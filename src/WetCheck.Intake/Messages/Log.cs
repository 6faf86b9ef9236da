using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Sentences about the log beside a job file.</summary>
internal static partial class Messages
{
    public static Message LogTorn() =>
        Message.Blanks("log-torn",
            "The log ends in the middle of an answer, so this one does not count. Give it once more with  wetcheck look");

    public static Message LogTooLong() =>
        Message.Blanks("log-too-long",
            $"The log holds more than {Limits.LogAnswers} answers; from here on none counts. Write what counts into "
            + $"the job file, and move the log away.");

    public static Message LogLine() =>
        Message.Blanks("log-line", "This line of the log is no answer, so it does not count. Give it once more with  wetcheck look");

    public static Message LogTime(string typed) =>
        Message.Blanks("log-time", $"\"{Short(typed)}\" is no date with a time. Write it like  2026-11-25T16:05:00-06:00");

    public static Message LogTwice() =>
        Message.Asks("log-twice",
            "This answer stands above already, word for word. It counts once. Leave it, or give it anew with  wetcheck look");

    public static Message LogJumped(string time) =>
        Message.Asks("log-jumped",
            $"The clock stood at {Short(time)}, before what stands above it, or it was not set. The answer counts by "
            + $"its place in the log. Is that as it was meant?");

    /// <summary>Null: the answer speaks of one member that is there.</summary>
    public static Message? OfMember(MemberPath member, Draft draft, Draft said, bool isGone)
    {
        var there = draft.Members(member.Kind).Where(one => one.Place == member.Place).Select(one => one.Index!.Value).Order().ToList();
        return !there.Contains(member.Index)
                ? Message.Blanks("no-member",
                    $"{member.Line} has no number {member.Index}."
                    + (there.Count == 0 ? " Write it with no number to add one." : $" Known: {string.Join(", ", there)}."))
            : !isGone && said.Members(member.Kind).Count() > 1
                ? Message.Blanks("one-member",
                    $"That is for one only, number {member.Index} of {member.Line}. Write one answer, or none where it is gone.")
            : null;
    }
}
