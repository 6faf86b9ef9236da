using Scriban.Runtime;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The questions of a starting file on one page to write on, in the same order.</summary>
public static class AnswerSheet
{
    /// <summary>HTML that stands alone: no script, nothing loaded.</summary>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Html(Job job, RuleBook book, string language)
    {
        var phrases = new Phrases(book, language);
        var method = job.Method is { } known ? phrases.Of(known.Say) : phrases[Phrase.Head.NoMethod];
        return Sheet.Fill(book, "answers.html", PageModel.Object(
            ("language", Escape.Html(language)),
            ("job", Escape.Html(job.Name.Length > 0 ? job.Name : method)),
            ("title", Escape.Html(phrases[Phrase.Start.Sheet])),
            ("comments", PageModel.Array(StartHeader.Comments(job, phrases).Select(HtmlPage.Text))),
            ("rows", PageModel.Array(Rows(job, book, phrases))),
            ("closing", Escape.Html(phrases[Phrase.Close.Record]))));
    }

    /// <summary>The sheet of a method, or of a job whose method is not known, before there is a job.</summary>
    /// <param name="method">Null: not known.</param>
    /// <exception cref="TemplateException">The book's template can't be filled.</exception>
    public static string Html(RuleBook book, Method? method, string language, bool metric = false)
    {
        var none = new Dictionary<string, StatedCode>(StringComparer.Ordinal);
        var job = new Job("", "", method, null, metric, none, [], [], null, null, new Dictionary<string, At>(StringComparer.Ordinal));
        return Html(job, book, language);
    }

    private static IEnumerable<ScriptObject> Rows(Job job, RuleBook book, Phrases phrases) =>
    [
        .. StartHeader.Lines(job, book.Vocabulary, phrases)
            .Select(line => Row(line.Name, "", line.Name == "job" ? line with { Answer = job.Name } : line, phrases)),
        .. StartFile.Sections(job, book, phrases.Language).SelectMany(section => section.Lines
            .Select(line => Row(line.Name, $"{section.Name}.{line.Name}", line, phrases))
            .Prepend(Row(section.Name, section.Lines.Count == 0 ? section.Name : "", section.Head, phrases,
                heads: section.Lines.Count > 0))),
        Row("notes", "", StartLine.Nothing, phrases),
    ];

    /// <param name="path">In the job file; empty for its header and for headings.</param>
    private static ScriptObject Row(string name, string path, StartLine line, Phrases phrases, bool heads = false) => PageModel.Object(
        ("heads", heads),
        ("path", Escape.Html(path)),
        ("name", Escape.Html(name)),
        ("said", Escape.Html(line.Said)),
        ("ask", HtmlPage.Text(line.Ask)),
        ("examples", HtmlPage.Text(StartLine.Shown(line.Words, phrases))),
        ("answer", HtmlPage.Text(line.Answer)));
}
