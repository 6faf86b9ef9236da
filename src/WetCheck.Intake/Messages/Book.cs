namespace WetCheck.Intake;

/// <summary>Sentences about the files of a rule book.</summary>
internal static partial class Messages
{
    public static Message NamesWanted() => Message.Blanks("names-wanted", "Lines belong here, not a text. Write  name: value");

    public static Message TextWanted() => Message.Blanks("text-wanted", "A single text belongs here. Write it on this line.");

    public static Message ListWanted() => Message.Blanks("list-wanted", "A list belongs here. Write  [ { ... }, { ... } ]");

    public static Message Missing(string name) => Message.Blanks("missing", $"\"{name}\" is missing. Write a line  {name}: ...");

    public static Message UnknownLine(string name, IReadOnlyList<string> known) =>
        Message.Blanks("unknown-line", $"\"{Short(name)}\" is not known here.{NearestOf(name, known)}");

    public static Message YesOrNo(string text) =>
        Message.Blanks("yes-or-no", $"\"{Short(text)}\" is neither yes nor no. Write one of them.");

    /// <summary>Book files have no line for units.</summary>
    public static Message BookQuantity(Fault fault) => Message.Blanks(
        fault.Code, fault.Code == LoneNumbersCode ? "Inches or millimetres? A book is for both: write  2 in  or  40 mm" : fault.Say);

    public static Message UnknownName(string what, string name, IReadOnlyList<string> known) =>
        Message.Blanks("unknown-name", $"There is no {what} \"{Short(name)}\".{NearestOf(name, known)}");

    public static Message DoubleName(string what, string name) =>
        Message.Blanks("double-name", $"There are two of {what} \"{name}\". Give one of them another name.");

    public static Message AboveItself(string kind) =>
        Message.Blanks("above-itself", $"\"{kind}\" stands above itself. Name another kind in  above:");

    public static Message NoNumberReading(string reading) =>
        Message.Blanks("no-number-reading",
            $"\"{reading}\" is not read as one number, so it can't be held against one. Write one of its words.");

    public static Message NoChoiceReading(string reading) =>
        Message.Blanks("no-choice-reading", $"\"{reading}\" is a number. Write  {{ at_least: ... }}  or at_most, over, under.");

    public static Message UnknownChoice(string reading, string choice, IReadOnlyList<string> known) =>
        Message.Blanks("unknown-choice", $"\"{reading}\" has no \"{Short(choice)}\".{NearestOf(choice, known)}");

    public static Message NoDatum(string reading) =>
        Message.Blanks("no-datum", $"\"{reading}\" is a height: say above what. Write  ... above DATUM");

    public static Message DatumNotWanted(string reading) =>
        Message.Blanks("datum-not-wanted", $"\"{reading}\" is no height. Leave out the words after the number.");

    public static Message OtherMeasure(string reading, string other) =>
        Message.Blanks("other-measure",
            $"\"{reading}\" can't be held against \"{other}\": they don't measure the same. Name a reading that does.");

    public static Message LimitWithoutVersions() =>
        Message.Blanks("limit-without-versions",
            "\"limit\" is used, and no version sets it. Write it as a number, or add  versions:  with a limit in each.");

    public static Message VersionWithoutLimit() =>
        Message.Blanks("version-without-limit", "The rule asks for \"limit\", and this version sets none. Write a line  limit: ...");

    public static Message LimitUnused() =>
        Message.Blanks("limit-unused", "This version sets a limit, and the rule's  require:  does not ask for it. Write  limit  there.");

    public static Message LimitOutside() =>
        Message.Blanks("limit-outside", "\"limit\" stands only in  require:  of the rule. Write the number here.");

    public static Message VersionWithBoth() =>
        Message.Blanks("version-with-both", "A version sets a limit or a requirement. Make two versions of it.");

    public static Message EmptyCondition() => Message.Blanks("empty-condition", "Nothing is asked here. Write  reading: answer");

    public static Message ListAsPath(string kind) =>
        Message.Blanks("list-as-path", $"There can be many of \"{kind}\". Write  some: {{ of: {kind}, ... }}  or  each:");

    public static Message NotBelow(string kind, string part) =>
        Message.Blanks("not-below", $"\"{kind}\" is no part of \"{part}\". Name a kind that is.");

    public static Message NotOrdered(string part) =>
        Message.Blanks("not-ordered", $"\"{part}\" has nothing behind or in front of it. Use a kind whose parts stand in order.");

    public static Message RelationMissing() =>
        Message.Blanks("relation-missing", "Say whose parts: write  of: KIND  or behind, or in front.");

    public static Message OneBody(IReadOnlyList<string> found) => Message.Blanks(
        "one-body", found.Count == 0 ? "The rule does nothing yet. Write one of  require, conclude, caution, note."
            : $"{Listed(found, "and")} stand in one rule. Keep one, make another rule of the rest.");

    public static Message PathDiffers(string id, string path) =>
        Message.Blanks("path-differs", $"The file is {path}, so its rule is \"{path}\", not \"{Short(id)}\". Write that.");

    public static Message NumberTaken(int number, string by) =>
        Message.Blanks("number-taken", $"{number} is the number of {by}. Give this rule one of its own.");

    public static Message NumberRetired(int number) =>
        Message.Blanks("number-retired", $"{number} was given up and is never used again. Take another number.");

    public static Message NumberWanted(string text) =>
        Message.Blanks("number-wanted", $"\"{Short(text)}\" is no whole number above 0. Write one, like 214.");

    public static Message CodeRange(string text) =>
        Message.Blanks("code-range", $"\"{Short(text)}\" is no code. Write  IRC,  IRC 2021,  IRC 2009..  or  IRC ..2006");

    public static Message Cycle(IReadOnlyList<string> rules) =>
        Message.Blanks("cycle", $"These rules wait for each other: {string.Join(" -> ", rules)}. Take one reading out of one of them.");

    public static Message NothingConcludes(string reading) =>
        Message.Blanks("nothing-concludes", $"No rule fills \"{reading}\". Write a rule with  conclude: {reading}");

    public static Message NoConclusion(string kind, string reading) =>
        Message.Blanks("no-conclusion",
            $"\"{kind}\" has no conclusion \"{Short(reading)}\". Add it to the vocabulary:  {reading}: {{ is: conclusion }}");

    public static Message UnknownSlot(string slot) =>
        Message.Blanks("unknown-slot",
            $"{{{Short(slot)}}} is no slot. Use one of  {{found}} {{limit}} {{short}} {{count}} {{place}} {{part}}");

    public static Message UnknownRow(string row) => Message.Blanks("unknown-row", $"{Short(row)} is not in sources.yaml. Add it there.");

    public static Message SlotUnclosed(string text) =>
        Message.Blanks("slot-unclosed", $"A brace is not closed in \"{Short(text)}\". Write slots as  {{limit}}");

    public static Message ExpectWord(string word) => Message.Blanks(
        "expect-word", $"\"{Short(word)}\" is no result.{NearestOf(word, CaseReader.Results)}");

    public static Message JobWanted() =>
        Message.Blanks("job-wanted", "The lines of a job belong here. Write  job: { curb: { height: 5 } }");

    public static Message BracesWanted() => Message.Blanks(
        "braces-wanted",
            "Where lines are given for all cases, they stand first, and they and each job stand in braces. Write  "
            + "job: { curb: { height: 5 } }");

    public static Message StopUnknown(string stop, IReadOnlyList<string> known) =>
        Message.Blanks("stop-unknown", $"No method has a stop \"{Short(stop)}\".{NearestOf(stop, known)}");

    public static Message CaseWithoutRule(string id) =>
        Message.Blanks("case-without-rule", $"There is no rule {id} for these cases. Write {id}.yaml beside them.");

    public static Message StrayFile(string path) =>
        Message.Blanks("stray-file",
        $"{path} is in no folder that is read. Rules stand in a chapter's folder:  floor/size.yaml");

    public static Message RangeWanted(string text) =>
        Message.Blanks("range-wanted", $"\"{Short(text)}\" is no range. Write  0 in to 12 in");

    public static Message Absent(string file) => Message.Blanks("absent", $"{file} is not there, or is empty. A rule book starts with it.");

    private static string NearestOf(string name, IReadOnlyList<string> known)
    {
        var nearest = Names.Nearest(name, known);
        var others = known.Where(other => other != nearest).Distinct().ToList();
        var listed = string.Join(", ", others.Take(MostListed)) + (others.Count > MostListed ? " ..." : ".");
        return nearest is null ? $" Known: {listed}"
            : others.Count == 0 ? $" Nearest: {nearest}."
            : $" Nearest: {nearest}. Also: {listed}";
    }

    private const int MostListed = 12;
}
