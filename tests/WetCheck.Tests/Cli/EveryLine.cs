using System.Text.Json;
using WetCheck.Asking;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Cli;

/// <summary>
/// Every line that the schema of a job file has can be answered by <c>look JOB LINE ANSWER</c>: it is kept, or told why
/// not.
/// </summary>
public sealed class EveryLine
{
    private static readonly string[] s_answers =
        ["all", "none", "3", "left 2 below, above", "yes", "60 x 36", "?", "plan 3, 4", "\u3164#: [", "-"];

    [Theory]
    [InlineData("juniper")]
    [InlineData("five-answers")]
    public void Takes_any_answer_without_a_trace(string job)
    {
        var walk = TheBook.Walk(TheBook.Example(job));
        var (phrases, owed) = (new Phrases(walk.Book, "en"), Question.Owed(walk).ToList());
        var kept = 0;
        foreach (var line in Lines())
        {
            var asked = Asked(walk, line, phrases);
            foreach (var (question, answer) in asked.SelectMany(question => s_answers.Select(answer => (question, answer))))
            {
                foreach (var (one, read) in Meant.Of(question, answer, walk, owed))
                {
                    var (now, told) =
                        JobLog.Add(walk.Job, walk.Book.Vocabulary,
                        new LoggedAnswer(new At("answer", 1, 1), "2026-11-25T16:05:00Z", one.Line.Path, read));
                    (now is not null || told.Count > 0).Should().BeTrue($"{line}: {answer}");
                    kept += now is null ? 0 : 1;
                }
            }
        }

        kept.Should().BeGreaterThan(Lines().Count);
    }

    [Theory]
    [InlineData("nails.seen", "all")]
    [InlineData("nails.seen", "left 2 below, 3 above")]
    [InlineData("seams.seen", "none")]
    [InlineData("seams.seen", "some")]
    public void A_list_is_answered_by_its_line(string line, string answer)
    {
        using var desk = new Desk();
        var ran = desk.Run("look", "juniper", line, answer);
        ran.Messages.Should().BeEmpty();
        ran.Results.Should().StartWith("Kept.");
    }

    [Fact]
    public void The_schema_has_lines_of_every_section() =>
        Lines().Should().HaveCountGreaterThan(150).And.Contain(["nails.seen", "seams.seen", "liner.left", "stage", "walls.layers"]);

    /// <summary>None where the line is no question, which is told.</summary>
    private static IReadOnlyList<Question> Asked(Walk walk, string line, Phrases phrases)
    {
        try
        {
            return Named.Find(walk, line, phrases);
        }
        catch (RefusedException halt)
        {
            halt.Message.Should().NotBeEmpty();
            return [];
        }
    }

    private static List<string> Lines()
    {
        using var schema = JsonDocument.Parse(JobSchema.Of(TheBook.Book.Vocabulary));
        var lines = new List<string>();
        foreach (var section in schema.RootElement.GetProperty("properties").EnumerateObject())
        {
            lines.Add(section.Name);
            lines.AddRange(Properties(section.Value).Select(line => $"{section.Name}.{line}"));
        }

        return lines;
    }

    private static IEnumerable<string> Properties(JsonElement section)
    {
        if (section.TryGetProperty("properties", out var properties))
        {
            return properties.EnumerateObject().Select(line => line.Name);
        }

        return new[] { "anyOf", "oneOf" }.Where(key => section.TryGetProperty(key, out _))
            .SelectMany(key => section.GetProperty(key).EnumerateArray()).SelectMany(Properties);
    }
}
