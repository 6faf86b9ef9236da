using System.Text.Json;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads the log beside a job file, one answer a line. A line that can't be read is told and left out; the others count.</summary>
public static class LogReader
{
    /// <summary>What stands for bytes that are no text: a line that was torn within a character.</summary>
    private const char NotUtf8 = '\uFFFD';

    /// <summary>The answers in file order, with what could not be read.</summary>
    /// <param name="file">The file's name, for people.</param>
    public static (IReadOnlyList<LoggedAnswer> Answers, IReadOnlyList<Problem> Problems) Read(string file, string text)
    {
        var problems = new ProblemList();
        var source = new SourceText(file, text);
        problems.Open(source);
        var answers = new List<LoggedAnswer>();
        var lines = new HashSet<string>(StringComparer.Ordinal);
        for (var number = 1; number <= source.Lines.Count; number++)
        {
            var line = source.Line(number);
            if (line.Trim().Length == 0)
            {
                continue;
            }

            if (answers.Count == Limits.LogAnswers)
            {
                problems.Add(source.Place(number, 1), Messages.LogTooLong());
                break;
            }

            if (Answer(line, source.Place(number, 1)) is not { } answer)
            {
                problems.Add(source.Place(number, 1), number == source.Lines.Count ? Messages.LogTorn() : Messages.LogLine());
            }
            else if (Dates.Read(answer.Time) is null)
            {
                problems.Add(source.Place(number, 1), Messages.LogTime(answer.Time));
            }
            else if (!lines.Add(line.Trim()))
            {
                problems.Add(source.Place(number, 1), Messages.LogTwice());
            }
            else
            {
                var before = answers.Count > 0 ? answers[^1] : null;
                if (LogClock.Jumped(before, answer))
                {
                    problems.Add(source.Place(number, 1), Messages.LogJumped(answer.Time));
                }

                answers.Add(LogClock.After(before, answer));
            }
        }

        return (answers, problems.InOrder());
    }

    private static LoggedAnswer? Answer(string line, At at)
    {
        if (line.Contains(NotUtf8, StringComparison.Ordinal))
        {
            return null;
        }

        try
        {
            using var json = JsonDocument.Parse(line);
            return json.RootElement is { ValueKind: JsonValueKind.Object } answer
                && Text(answer, "at") is { } time && Text(answer, "path") is { } path && Text(answer, "read") is { } read
                ? new LoggedAnswer(at with { Column = ColumnOf(line) }, time, path, read, Text(answer, "by"),
                    Text(answer, "tool"), Text(answer, "replaces"), line)
                : null;
        }
        catch (Exception torn) when (torn is JsonException or InvalidOperationException or ArgumentException)
        {
            // The last two: half of a sign that takes two, written as an escape or as it is.
            return null;
        }
    }

    private static string? Text(JsonElement answer, string key) =>
        answer.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.String ? VisibleText.Line(value.GetString()!) : null;

    /// <summary>Where the answer as typed begins.</summary>
    private static int ColumnOf(string line)
    {
        const string Key = "\"read\"";
        var key = line.IndexOf(Key, StringComparison.Ordinal);
        var quote = key < 0 ? -1 : line.IndexOf('"', key + Key.Length);
        return quote < 0 ? 1 : quote + 2;
    }
}
