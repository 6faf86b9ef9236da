using System.Text.RegularExpressions;
using WetCheck.Intake;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Intake;

/// <summary>Blank means that nobody looked: as if the line were not there.</summary>
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
                JobPage.Of(BookText.Job($"units: inches\n{section.Name}:\n  {line.Name}:     # not looked\n")).Should().Be(empty, section.PathOf(line));
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
        foreach (var file in Examples)
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

        static string Page(string[] lines) => JobReader.Read("example.job.yaml", string.Join('\n', lines), BookText.Vocabulary).Job is { } job ? JobPage.Of(job) : "broken";
    }

    [GeneratedRegex(@"^(\s*[a-z][^:#]*:)\s+[^\s#].*$")]
    private static partial Regex Answered();
}
