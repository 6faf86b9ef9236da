using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The job file that a job starts with: a line for each question, blank where nothing is known.</summary>
public static class StartFile
{
    public const int Lines = 60;
    public const int Columns = 86;
    private const int CommentAt = 22;

    /// <param name="job">What is known already: name, method, stage, units, codes, and any readings.</param>
    public static string Of(Job job, RuleBook book, string language)
    {
        var phrases = new Phrases(book, language);
        var body = Sections(job, book, language).SelectMany(section => section.Lines
            .Select(line => Answerable("  " + line.Name, line, phrases))
            .Prepend(Answerable(section.Name, section.Head, phrases)));
        return string.Concat(Head(job, book, phrases).Concat(body).Append("notes:").Select(line => line + "\n"));
    }

    /// <summary>The questions of the file, in its order.</summary>
    public static IReadOnlyList<StartSection> Sections(Job job, RuleBook book, string language)
    {
        var phrases = new Phrases(book, language);
        return StartSections.Of(job, book, phrases, Lines - 1 - Head(job, book, phrases).Count());
    }

    private static IEnumerable<string> Head(Job job, RuleBook book, Phrases phrases) =>
        StartHeader.Comments(job, phrases).SelectMany(Comment)
            .Append("")
            .Concat(StartHeader.Lines(job, book.Vocabulary, phrases).SelectMany(line => OfHead(line, phrases)))
            .Append("");

    /// <summary>
    /// What can be written here stands beside the line, or above it if that is too long, or if it stays true when the
    /// line is filled.
    /// </summary>
    private static IEnumerable<string> OfHead(StartLine line, Phrases phrases)
    {
        var say = $"{line.Ask} {StartLine.Shown(line.Examples, phrases)}".Trim();
        var start = $"{line.Name}: {line.Answer}".TrimEnd();
        var beside = say.Length == 0 || (line.Answer.Length > 0 && line.Name is not ("units" or "stage")) ? start : Beside(start, say);
        return line.Name != "stage" && beside.Length <= Columns ? [beside] : [.. Comment(say), start];
    }

    /// <summary>With the question and its examples if there is room, else with the question, else bare.</summary>
    private static string Answerable(string name, StartLine line, Phrases phrases)
    {
        var start = $"{name}: {line.Answer}".TrimEnd();
        var examples = StartLine.Shown(line.Examples, phrases);
        string[] comments = line.Answer.Length > 0 ? [] : [$"{line.Ask}  {examples}".Trim(), line.Ask, examples];
        return comments.Where(comment => comment.Length > 0).Select(comment => Beside(start, comment))
            .FirstOrDefault(text => text.Length <= Columns) ?? start;
    }

    private static string Beside(string start, string comment) => $"{start.PadRight(CommentAt - 1)} # {comment}";

    /// <summary>Broken between sentences if need be, else between words.</summary>
    private static IEnumerable<string> Comment(string text)
    {
        var line = "#";
        foreach (var piece in text.Length + 2 <= Columns ? [text] : Sentences(text)
            .SelectMany(sentence => sentence.Length + 2 <= Columns ? [sentence] : sentence.Split(' ')))
        {
            if (line.Length + 1 + piece.Length > Columns)
            {
                yield return line.TrimEnd();
                line = "#";
            }

            line += " " + piece;
        }

        yield return line.TrimEnd();
    }

    private static string[] Sentences(string text) => text.Replace(". ", ".\n", StringComparison.Ordinal).Split('\n');
}
