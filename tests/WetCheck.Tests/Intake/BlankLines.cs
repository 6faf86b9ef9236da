using System.Text.RegularExpressions;
using WetCheck.Intake;
using WetCheck.Tests.Conventions;
using WetCheck.Tests.Reporting.Start;

namespace WetCheck.Tests.Intake;

/// <summary>Requirement 4: blank means that nobody looked, as if the line were not there.</summary>
[Trait("Requirement", "4")]
public sealed partial class BlankLines
{
    private static readonly string[] Examples = [.. Repository.In("docs/examples/", ".job.yaml")];

    [Fact]
    public void Every_question_left_blank_says_nothing()
    {
        var layout = new JobLayout(BookText.Vocabulary);
        var empty = JobPage.Of(BookText.Job("units: inches"));
        foreach (var section in layout.Sections)
        {
            JobPage.Of(BookText.Job($"units: inches\n{section.Name}:")).Should().Be(empty, section.Name);
            foreach (var line in section.Lines)
            {
                JobPage.Of(BookText.Job($"units: inches\n{section.Name}:\n  {line.Name}:     # not looked\n")).Should()
                    .Be(empty, section.PathOf(line));
            }
        }

        foreach (var key in HeaderReader.Keys(BookText.Vocabulary))
        {
            JobPage.Of(BookText.Job($"{key}:")).Should().Be(JobPage.Of(BookText.Job("job: x")), key);
        }
    }

    [Fact]
    public void An_answer_taken_out_of_an_example_is_its_line_taken_out()
    {
        foreach (var file in Depth.OneOf(4, Examples))
        {
            var lines = Repository.Lines(file);
            for (var i = 0; i < lines.Length; i++)
            {
                if (Answered().Match(lines[i]) is { Success: true } answer)
                {
                    var blank = Page([.. lines[..i], answer.Groups[1].Value, .. lines[(i + 1)..]]);
                    var without = Page([.. lines[..i], .. lines[(i + 1)..]]);
                    blank.Should().Be(without, $"{file}:{i + 1}");
                }
            }
        }

        static string Page(string[] lines) =>
            JobReader.Read("example.job.yaml", string.Join('\n', lines), BookText.Vocabulary).Job is { } job
            ? JobPage.Of(job) : "broken";
    }

    /// <summary>The files jobs start with: every question of every method, taken out line by line.</summary>
    [Fact]
    public void A_question_of_a_starting_file_is_its_line_taken_out()
    {
        foreach (var method in TheBook.Book.Vocabulary.Methods)
        {
            foreach (var stage in Depth.OneOf(3, method.Stops.Select(stop => stop.Name).Append("")))
            {
                var lines = Starts.File(method.Name, stage, "", "en").Split('\n');
                var whole = Page(lines);
                foreach (var i in Enumerable.Range(0, lines.Length).Where(i => Question().IsMatch(lines[i]) && !Heads(lines, i)))
                {
                    Page([.. lines[..i], .. lines[(i + 1)..]]).Should().Be(whole, $"{method.Name}, {stage}: {lines[i]}");
                }
            }
        }

        static bool Heads(string[] lines, int i) => lines[i][0] != ' ' && lines[i + 1].StartsWith(' ');

        static string Page(string[] lines) => JobPage.Of(TheBook.Job(string.Join('\n', lines)));
    }

    [GeneratedRegex("^(  )?[a-z][^:#]*: *(#.*)?$")]
    private static partial Regex Question();

    [GeneratedRegex(@"^(\s*[a-z][^:#]*:)\s+[^\s#].*$")]
    private static partial Regex Answered();
}
