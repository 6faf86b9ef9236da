using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Sentences about files of local changes.</summary>
internal static partial class Messages
{
    public static Message LocalMissing(string file) =>
        Message.Blanks("local-missing",
            $"There is no file \"{Short(file)}\" where this job file stands. Write its path from there, or leave the line blank.");

    public static Message LocalElsewhere(string file) =>
        Message.Blanks("local-elsewhere",
            $"\"{Short(file)}\" is not in the folder of this job file. Put it there, and write its name alone.");

    public static Message LocalEmpty() =>
        Message.Blanks("local-empty", "Nothing is written here. Write  local: the town  and below it  changes:  with a list.");

    public static Message LocalRule(string name, IReadOnlyList<string> known) => Message.Blanks(
        "local-rule",
            $"The book has no rule "
            + $"\"{Short(name)}\".{(Names.Nearest(name, known) is { } near ? $" Nearest: {near}." : "")} A rule of "
            + $"your own: add  number: 901  and all its lines.");

    public static Message LocalName(string name) =>
        Message.Blanks("local-name", $"\"{Short(name)}\" has a number, so it is a rule of your own. Write its name as  local/name");

    public static Message LocalNumber(int number) =>
        Message.Blanks("local-number", $"{number} belongs to the book. Give a rule of your own a number from 901 to 999.");

    public static Message LocalNothing(string rule) =>
        Message.Blanks("local-nothing", $"Nothing of {rule} is changed here. Write  limit: ... , versions: ...  or  set aside: yes");

    public static Message LocalNoLimit(string rule) =>
        Message.Blanks("local-no-limit", $"{rule} asks for no number. Write  versions: ...  or  set aside: yes");

    public static Message LocalLimitWhich(string rule, IReadOnlyList<Quantity> numbers) => Message.Blanks(
        "local-limit-which",
        $"{rule} asks for {string.Join(", ", numbers.Select(number => $"{number.Typed.FromBase(number.Value)} {number.Typed.Key}"))}"
        + ". Write which one it replaces:  instead of: ...");
}
