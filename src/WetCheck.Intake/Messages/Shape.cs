using System.Globalization;

namespace WetCheck.Intake;

/// <summary>Every sentence about a file, English only for now. Each code has a pair in <c>tests/errors</c>.</summary>
internal static partial class Messages
{
    public static Message More(int count, bool stops)
    {
        var say = $"{count} more like these in this file. Mend the first ones, then run again.";
        return stops ? Message.Stops("more-of-them", say) : Message.Blanks("more-of-them", say);
    }

    public static Message TooLong() =>
        Message.Stops("file-too-long", "This file is longer than 1,000,000 characters. Is it a job file? Write one line for each answer.");

    public static Message TooMuch() =>
        Message.Stops("too-much",
        "More than 100,000 names and answers. Is it a job file? Write one line for each answer.");

    public static Message TooDeep() =>
        Message.Stops("too-deep",
        "Brackets stand in brackets too many times here. Take them out: one line for each answer.");

    public static Message OddCharacter(int c) =>
        Message.Stops("odd-character",
            $"A character that can't be seen stands here (U+{c.ToString("X4", CultureInfo.InvariantCulture)}). Delete "
            + $"it and type the line again.");

    public static Message BrokenShape() =>
        Message.Stops("broken-shape", "This line does not fit the lines above it. Write one line as  name: answer");

    public static Message LeftOpen() =>
        Message.Stops("left-open", "Nothing can be read after this. Close the bracket or quote that is open here.");

    public static Message SecondDocument() =>
        Message.Stops("second-document",
        "A second file starts here. Delete the line of dashes, or keep the rest in a file of its own.");

    public static Message Anchor() =>
        Message.Stops("anchor", "& and * stand for other texts in YAML; they are not used here. Write the answer out.");

    public static Message Tag() =>
        Message.Stops("tag",
        "! is a sign of YAML that is not used here. Leave it out, or put quotes around the answer.");

    public static Message KeyIsNoName() => Message.Blanks("key-is-no-name", "A list or a bracket can't be a name. Write  name: answer");

    public static Message Twice(string name, int line) =>
        Message.Blanks("twice", $"\"{name}\" stands here and in line {line}. Neither is read. Put both answers on one line.");

    public static Message Tab() => Message.Stops("tab", "This line starts with a Tab. Use two spaces.");

    public static Message TabAfterSpaces() => Message.Stops("tab", "A Tab stands before the name. Use spaces only.");

    public static Message NoSpaceAfterColon(string name, string answer) =>
        Message.Stops("no-space", $"Put a space after the colon:  {name}: {answer}");

    public static Message NoColon(string text) =>
        Message.Stops("no-colon", $"No colon in \"{Short(text)}\". Write  name: answer  or start the line with # to keep it as a note.");

    public static Message SecondColon(string name, string answer) =>
        Message.Stops("second-colon", $"A second colon in one line. Put quotes around the answer:  {name}: \"{Short(answer)}\"");

    public static Message OddIndent(int here, int above, string name) => Message.Stops(
        "odd-indent", $"{Spaces(here)} here, {above} on the lines above. Line it up under \"{name}\".");

    public static Message AnswerAboveQuestions(string name, string answer, IReadOnlyList<int> lines) => Message.Stops(
        "answer-above-questions",
        $"{Lines(lines)} {(lines.Count == 1 ? "belongs" : "belong")} to \"{name}\". Write {Short(answer)} there.");

    public static Message OpenQuote(char quote, string text) => Message.Stops(
        "open-quote",
            $"A quote opens here and does not close. For inches write  "
            + $"{(text.Length == 0 ? "5" : Short(text))}{quote}  with the mark behind the number.");

    public static Message QuoteOverLines(string text, int line) => Message.Stops(
        "open-quote", $"A quote opens here and closes in line {line}. For inches write  {Short(text)}\"  with the mark behind the number.");

    public static Message TextAfterQuote(string text) =>
        Message.Stops("text-after-quote",
        $"Text goes on behind the quote. Write it without quotes:  {Short(text).Replace("\"", "", StringComparison.Ordinal)}");

    public static Message FirstCharacter(string first) =>
        Message.Stops("first-character",
            $"An answer can't start with \"{first}\". Start with the number or the word, or put quotes around the answer.");

    public static Message OpenBracket(char bracket) =>
        Message.Stops("open-bracket", $"The {bracket} is not closed. Write the answer without brackets.");

    public const string HashCode = "hash-starts-a-comment";

    public static Message HashStartsComment(string lost, string whole) => Message.Blanks(
        HashCode, $"\"{Short(lost)}\" is taken for a note, not for the answer. Put quotes around it:  "
            + $"\"{Short(whole)}\"  or a space behind the #.");

    private static string Spaces(int count) => count switch { 0 => "No spaces", 1 => "1 space", _ => $"{count} spaces" };

    /// <summary>"Line 12", "Lines 12 and 13", "Lines 12, 14 and 20".</summary>
    private static string Lines(IReadOnlyList<int> lines) =>
        lines.Count == 1 ? $"Line {lines[0]}" : $"Lines {Listed([.. lines.Select(line => $"{line}")], "and")}";

    /// <summary>"a", "a and b", "a, b and c".</summary>
    private static string Listed(IReadOnlyList<string> words, string last) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} {last} {words[^1]}",
    };

    private static string Short(string text) => text.Length <= 40 ? text : text[..37].TrimEnd() + "...";
}
