using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Sentences about the table of levels beside a job file.</summary>
internal static partial class Messages
{
    public static Message LevelsHeader(string typed) =>
        Message.Blanks("levels-header",
            $"\"{Short(typed)}\" names no columns, so nothing of this file is read. Write the first line as  from "
            + $"left,from entry,up  or as  from left,from entry,down");

    public static Message LevelsLine(string typed) =>
        Message.Blanks("levels-line",
            $"\"{Short(typed)}\" lacks a value, so this point does not count. Write three on a line, like  30,18,-1/4");

    public static Message TooManyLevels() =>
        Message.Blanks("levels-many",
            $"More than {Limits.Levels} points, so nothing of this file is read. Keep one every few inches, and those "
            + $"at walls, drain and low spots.");

    public static Message LevelsTwice() =>
        Message.Asks("levels-twice",
            "Levels stand here and on the line \"levels:\" of the job. Where the two are not the same neither counts. "
            + "Which is it? Keep one.");
}
