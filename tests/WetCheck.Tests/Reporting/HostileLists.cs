using System.Text.Json;
using System.Text.RegularExpressions;
using WetCheck.Flow;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>Whatever stands in a text field of a job comes out of every list, for every reader, as plain text.</summary>
public sealed partial class HostileLists
{
    internal static readonly string[] Attacks =
    [
        "<script>alert(1)</script>", "</style><img src=x onerror=alert(1)>", "\"><svg onload=alert(1)>", "&lt;b&gt;",
            "x';}</style><style>*{color:red}", "\\3c /style>", "a\\22 ;} @import url(x)",
        "\u001b[31mred\u001b[0m", "\u001b]8;;https://example.org\u0007here\u001b]8;;\u0007", "\u009b31m",
            "\u0000\u0001\u0007\b\u007f\u0085", "a\rb\nSTOP",
        "\u202eevil\u202c", "\u2066a\u2069\u200f\u200e\u061c", "a\u200bb\u200cc\u200dd\ufeff\u2060", "\u2028\u2029", "\ud800",
        "{{ 1 + 1 }}", "{{ for i in 1..9999999 }}x{{ end }}", "{found} {limit}", "%{x}%",
        "# h", "- [x](javascript:alert(1))", "![x](https://example.org/a.png)", "|a|b|", "`code`", "**b** __c__ ~~d~~",
            "<https://example.org>", "https://example.org", "1. x", "> q", "***",
        "!!python/object", "*a", "&a b", "- - -", "key: value", "\"", "'", "\\", "%TAG", "---",
    ];

    [Fact]
    public void Every_list_says_it_as_plain_text()
    {
        foreach (var attack in Depth.OneOf(3, Attacks.Append(new string('x', 10_000))))
        {
            var walk = Attacked(attack);
            foreach (var reader in Enum.GetValues<Reader>())
            {
                Page(PunchPage.Html(walk, "both", "", reader), attack);
                Lines(PunchPage.Message(walk, "both", "", reader), attack);
                var markdown = PunchPage.Markdown(walk, "both", "", reader);
                Lines(markdown, attack);
                markdown.Should().NotMatchRegex(@"(?<!\\)<[a-z/!]|(?<!\\)\[x(?<!\\)\]\(|(?<!\\)://|^---|^> q|\|a\|", attack);
            }

            Lines(ScreenText.Of(Listing.Of(walk, "en", ""), all: true), attack);
            Lines(string.Join('\n', walk.ToFix.Select(entry => WhyText.Of(walk, entry, "en", ""))), attack);
            var json = JsonList.Of(walk, "en", "");
            JsonDocument.Parse(json).RootElement.GetProperty("job").GetString().Should().Be(walk.Job.Name);
            Unseen(json, attack);
        }
    }

    /// <summary>Problems are met on a terminal: the line as typed, what it is taken for.</summary>
    [Fact]
    public void Every_problem_says_it_as_plain_text()
    {
        foreach (var attack in Attacks.Append(new string('x', 10_000)))
        {
            foreach (var text in new[] { attack, $"{attack}: 1", $"method: {Quoted(attack)}",
                $"drain: {{ weeps: {Quoted(attack)} }}", $"{Quoted(attack)}: 1", $"curb:\n  {Quoted(attack)}: 3",
                $"readings by: [{attack}" })
            {
                foreach (var problem in JobReader.Read(attack + ".job.yaml", "units: inches\n" + text, TheBook.Book.Vocabulary).Problems)
                {
                    Unseen(problem.Say + problem.Typed.Replace('\t', ' ') + problem.At, attack);
                    problem.Say.Length.Should().BeLessThan(800, attack);
                    problem.At.File.Should().NotContain("\n");
                }
            }
        }
    }

    [Fact]
    public void What_can_not_be_seen_is_shown_and_what_can_stays() =>
        VisibleText.Of("a\u001b[31m\u202eb\ud83d\udebf ñ½\t\n\ud800").Should().Be("a\ufffd[31m\ufffdb\ud83d\udebf ñ½\t\n\ufffd");

    /// <summary>Juniper, with the attack in every field that takes any text.</summary>
    private static Walk Attacked(string attack)
    {
        var said = Quoted(attack);
        var text = Conventions.Repository.Read("docs/examples/juniper.job.yaml")
            .Replace("job: Juniper Court, upstairs hall bath", "job: " + said, StringComparison.Ordinal)
            .Replace("plumbing code: IRC 2021", "plumbing code: " + said, StringComparison.Ordinal)
            .Replace("readings by: MR, tape, 2026-11-25", "readings by: " + said, StringComparison.Ordinal)
            .Replace("notes: All names and numbers are invented.", "notes: " + said, StringComparison.Ordinal)
            .Replace("  right: 2-3/8", $"  right: {{ read: 2-3/8, by: {said}, photo: {said} }}", StringComparison.Ordinal)
            .Replace("  weeps: blocked", "  weeps: " + said, StringComparison.Ordinal);
        var (job, problems) = JobReader.Read((attack.Length < 200 ? attack : "long") + ".job.yaml", text, TheBook.Book.Vocabulary);
        job.Should().NotBeNull(attack + ": " + string.Join('\n', problems.Where(problem => problem.Effect == Effect.Stops)));
        return Inspection.Of(job!, problems, TheBook.Ready);
    }

    /// <summary>As YAML that spells every sign out, so that nothing is lost on the way in.</summary>
    internal static string Quoted(string text) =>
        "\"" + string.Concat(text.Where(c => !char.IsSurrogate(c))
        .Select(c => char.IsAsciiLetterOrDigit(c) ? c.ToString() : $"\\u{(int)c:x4}")) + "\"";

    /// <summary>Those that no page of ours has.</summary>
    internal static IEnumerable<string> Tags(string page, params string[] others) =>
        TagNames().Matches(page).Select(tag => tag.Groups[1].Value).Distinct().Except(s_tags).Except(others);

    private static void Page(string page, string attack)
    {
        Unseen(page, attack);
        Tags(page).Should().BeEmpty(attack);
        page.Should().NotMatchRegex("onerror=(?!alert\\(1\\)&gt;)|@import(?! url)", attack);
        Styles().Matches(page).Should().HaveCount(1, attack);
    }

    private static void Lines(string text, string attack)
    {
        Unseen(text, attack);
        text.Split('\n').Should().NotContain("STOP", attack);
        text.Split('\n').Max(line => line.Length).Should().BeLessThan(1_000, attack);
    }

    internal static void Unseen(string text, string attack) =>
        text.Where(c => VisibleText.IsUnseen(c) || c is '\r' or '\t').Should().BeEmpty(attack);

    private static readonly string[] s_tags =
        ["!DOCTYPE", "html", "head", "meta", "title", "style", "body", "svg", "symbol", "path", "use", "header",
            "main", "h1", "h2", "h3", "p", "ul", "li", "b", "section", "article", "div", "span", "dl", "dt", "dd",
            "details", "summary", "footer", "figure", "desc", "circle", "text"];

    [GeneratedRegex("<([!a-zA-Z][a-zA-Z0-9]*)")]
    private static partial Regex TagNames();

    [GeneratedRegex("</?style>.*?</style>", RegexOptions.Singleline)]
    private static partial Regex Styles();
}
