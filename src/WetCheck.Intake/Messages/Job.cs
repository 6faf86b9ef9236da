using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Sentences about the lines of a job file.</summary>
internal static partial class Messages
{
    public static Message NothingWritten() =>
        Message.Stops("nothing-written",
        "Nothing is written in this file. Write a first line, like  job: upstairs bath");

    public static Message NoJob() => Message.Stops("no-job", "These are no lines of a job. Write one line as  name: answer");

    public static Message SizeOfNoRectangle(string size, Rational floor)
    {
        var area = Math.Round(floor.Approximate, 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
        return Message.Blanks("size-of-no-rectangle",
            $"By its outline the floor is no rectangle, so \"{Short(size)}\" alone is too much. Write its area with "
            + $"it:  {Short(size)}, floor {area} sq in");
    }

    public static Message ChangeForm(string typed) =>
        Message.Blanks("change-form", $"\"{Short(typed)}\" changes no line. Write it as  'curb.height: 5'");

    public static Message LocalByChange() =>
        Message.Blanks("local-by-change",
            "Local changes are taken from the job file itself. Write  local: FILE  there, or in a copy of it.");

    public static Message UnknownSection(string name, IReadOnlyList<string> known) =>
        Message.Blanks("unknown-section", $"A job has no \"{Short(name)}\".{NearestOf(name, known)}");

    public static Message StandsBelow(string name, string section) =>
        Message.Blanks("stands-below", $"\"{Short(name)}\" stands below \"{section}:\". Write it there, two spaces in.");

    public static Message UnknownQuestion(string section, string name, IReadOnlyList<string> known) =>
        Message.Blanks("unknown-question", $"The {section} has no \"{Short(name)}\".{NearestOf(name, known)}");

    public static Message StandsElsewhere(string section, string name, string other) =>
        Message.Blanks("stands-elsewhere", $"The {section} has no \"{Short(name)}\". It stands below \"{other}:\". Write it there.");

    public static Message OneAnswerHere(string name) =>
        Message.Blanks("one-answer-here", $"\"{Short(name)}\" takes an answer on its own line. Write  {Short(name)}: answer");

    public static Message SayWhichBelow(string section, string typed, IReadOnlyList<string> lines) =>
        Message.Blanks("say-which-below",
            $"What of the {section} is \"{Short(typed)}\"? Write it below, two spaces in, behind one of: {string.Join(", ", lines)}.");

    public static Message AnsweredTwice(string reading, string typed) =>
        Message.Blanks("answered-twice", $"\"{reading}\" is answered twice; \"{Short(typed)}\" is the second. Write one of them.");

    public static Message UnknownAnswer(string reading, string typed, IReadOnlyList<string> choices) =>
        Message.Blanks("unknown-answer", $"\"{Short(typed)}\" is no answer to \"{reading}\".{NearestOf(typed, choices)}");

    public static Message PlaceMissing(string typed, IReadOnlyList<string> places) =>
        Message.Blanks("place-missing", $"Where is \"{Short(typed)}\"? Write one of these in front: {string.Join(", ", places)}.");

    public static Message NoneAmongMembers(string word) =>
        Message.Blanks("none-among-members",
            $"\"{word}\" can't stand for one of several. Write ? for one that is there and nothing is known of.");

    public static Message TooManyMembers(int most) =>
        Message.Blanks("too-many-members", $"More than {most} on one line; the rest is not read. Write the worst ones, and  seen: some");

    public static Message TooManyLayers(int most) =>
        Message.Blanks("too-many-layers",
            $"More than {most} layers on one line; the rest is not read. Write layers that are alike as one.");

    public static Message PlanOfNone(string typed) =>
        Message.Blanks("plan-of-none",
            $"A plan of \"{typed}\" says nothing of what is there. Leave the line blank, or write  none  once it is seen.");

    public static Message ToolWithoutMarks(string tool, string asked) =>
        Message.Asks("tool-without-marks",
            $"\"{tool}\" has no marks for this. It is taken as read with: {asked}. Write the tool it was read on, if it was another.");

    public static Message AllOrSome(string typed) =>
        Message.Blanks("all-or-some", $"\"{Short(typed)}\": have all been seen? Write  all  or  some");

    public static Message UnknownMethod(string typed, IReadOnlyList<string> known) =>
        Message.Blanks("unknown-method", $"There is no method \"{Short(typed)}\".{NearestOf(typed, known)}");

    public static Message UnknownStage(string typed, string? method, IReadOnlyList<string> known) => Message.Blanks(
        "unknown-stage",
            $"{(method is null ? "No method" : $"\"{method}\"")} has {(method is null ? "a" : "no")} stop "
            + $"\"{Short(typed)}\".{NearestOf(typed, known)}");

    public static Message UnknownUnits(string typed) =>
        Message.Blanks("unknown-units", $"\"{Short(typed)}\" are no units of a job. Write  inches  or  millimetres");

    /// <summary>The code by which tape notation tells a number without a unit.</summary>
    public const string LoneNumbersCode = "lone-number";

    public static Message LoneNumbers(IReadOnlyList<int> lines) => Message.Blanks(
        "lone-numbers", $"{Lines(lines)}: inches or millimetres? Write  units: inches  or  units: millimetres");

    public static Message UnknownTool(string typed, Vocabulary vocabulary) =>
        Message.Blanks("unknown-tool",
            $"There is no tool \"{Short(typed)}\".{NearestOf(typed, [.. vocabulary.Tools.Select(tool => tool.Name)])}");

    public static Message DateForm(string typed) =>
        Message.Blanks("date-form", $"\"{Short(typed)}\" is no date. Write year, month, day:  2026-11-25");

    public static Message UnknownAnswerPart(string typed, IReadOnlyList<string> known) =>
        Message.Blanks("unknown-answer-part", $"An answer has no \"{Short(typed)}\".{NearestOf(typed, known)}");

    public static Message CodeWords(string family, string rest) =>
        Message.Blanks("code-words", $"Taken for {family}, then \"{Short(rest)}\". Write the family and a year, like  {family} 2021");

    public static Message CodeName(string typed, IReadOnlyList<string> known) =>
        Message.Blanks("code-name",
            $"\"{Short(typed)}\" names no code. Write a name and a year, like  {known[0]} 2021. Known: {string.Join(", ", known)}.");

    public static Message Quantity(Fault fault) => Message.Blanks(fault.Code, fault.Say);

    public static Fault WhichDatum(int offset, string typed, IReadOnlyList<string> known) =>
        new("which-datum", offset, $"\"{Short(typed)}\" may be {Listed(known, "or")}. Write one of them.");

    public static Fault UnknownDatum(int offset, string typed, IReadOnlyList<string> known) =>
        new("unknown-datum", offset, $"No level is called \"{Short(typed)}\".{NearestOf(typed, known)}");

    public static Message NotBegun(IReadOnlyList<int> lines, string layer, string stage) => Message.Asks(
        "not-begun",
            $"{Lines(lines)} {(lines.Count == 1 ? "speaks" : "speak")} of the {layer}: not begun at the stop "
            + $"\"{stage}\". Is the stage as you meant? If planned, write  plan  in front.");

    public static Message FromNowhere(string datum, string method) => Message.Asks(
        "from-nowhere", $"Taken from {datum}, and \"{method}\" has none. Write where from, like  74 above room floor");

    public static Message RuledOut(IReadOnlyList<int> lines, string part, string method) => Message.Asks(
        "ruled-out",
            $"{Lines(lines)} {(lines.Count == 1 ? "speaks" : "speak")} of the {part}, and \"{method}\" has none. Is "
            + $"the method as you meant?");

    public static Message NoneOfMethod(string part, string method) => Message.Asks(
        "none-of-method", $"No {part} here, and \"{method}\" always has one. Is the method as you meant?");

    public static Message NoneWithReadings(string part, IReadOnlyList<int> lines) => Message.Asks(
        "none-with-readings",
            $"No {part} here, and {Lines(lines).ToLowerInvariant()} {(lines.Count == 1 ? "speaks" : "speak")} of it. "
            + $"Which is it? The readings count.");

    public static Message HardToBelieve(string spoken, string typed) =>
        Message.Asks("hard-to-believe", $"\"{Short(typed)}\": that's {spoken}, OK? If not, mend this line.");
}
