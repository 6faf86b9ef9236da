using System.Text.RegularExpressions;
using WetCheck.Intake;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Start;

/// <summary>Requirement 3: every example that stands in the comments of a starting file can be written in its place.</summary>
[Trait("Requirement", "3")]
public sealed partial class ExamplesInComments
{
    public static TheoryData<string, string, string, string> All => Starts.All;

    [Theory]
    [MemberData(nameof(All))]
    public void Each_is_read_without_a_question(string method, string stage, string size, string language)
    {
        var job = Starts.Job(method, stage, size);
        var text = StartFile.Of(job, TheBook.Book, language);
        var read = 0;
        foreach (var section in StartFile.Sections(job, TheBook.Book, language))
        {
            foreach (var example in section.Head.Examples)
            {
                string[] places =
                    section.Lines.Count == 0 ? [$"\n{section.Name}:"]
                    : [.. section.Lines.Where(line => line.Ask.Length == 0)
                    .Select(line => Below(text, section.Name, line.Name))];
                places.Should().NotBeEmpty($"{section.Name}: {example}");
                read += places.Count(place => Reads(text, place, example));
            }

            read += section.Lines.Where(line => line.Answer.Length == 0)
                .SelectMany(line =>
                line.Examples.Select(example => Reads(text, Below(text, section.Name, line.Name), example))).Count();
        }

        read.Should().BeGreaterThan(20);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Those_of_its_head_too(string method, string stage, string size, string language)
    {
        var job = Starts.Job(method, stage, size);
        var text = StartFile.Of(job, TheBook.Book, language);
        var comments = text[..text.IndexOf("\njob:", StringComparison.Ordinal)];
        foreach (var value in Values(comments))
        {
            Reads("units: " + (job.Metric == true ? "millimetres" : "inches") + "\ncurb:\n  height:\n", "\n  height:",
                value, "hard-to-believe");
        }

        Of(text, "stage").Should()
            .Equal((job.Method is { } own ? [own] : TheBook.Book.Vocabulary.Methods).SelectMany(one => one.Stops)
            .Select(stop => stop.Name).Distinct());
        foreach (var stop in Of(text, "stage"))
        {
            Reads(Regex.Replace(text, "(?m)^stage:.*$", "stage:"), "\nstage:", stop);
        }

        foreach (var discipline in TheBook.Book.Vocabulary.Disciplines.Select(discipline => discipline.Say.En))
        {
            Of(text, discipline).Should().NotBeEmpty();
            foreach (var family in Of(text, discipline))
            {
                Reads(text, $"\n{discipline}:", family).Should().Be(family == "none" || Reads(text, $"\n{discipline}:", family + " 2020"));
            }
        }

        Reads(text, "\nreadings by:", "JM, tape, 2026-11-25");
    }

    /// <summary>What the first comments say can be typed for a height: none, a plan, tape figures, a direction.</summary>
    private static List<string> Values(string comments)
    {
        var values = Value().Matches(comments).Select(match => match.Value.Trim()).ToList();
        values.Should().HaveCount(7);
        return values;
    }

    /// <summary>What stands in the comment beside or above a line.</summary>
    private static string[] Of(string text, string line)
    {
        var lines = text.Split('\n');
        var at = Array.FindIndex(lines, one => one.StartsWith(line + ":", StringComparison.Ordinal));
        var say = lines[at].Split('#') is [_, var beside] ? beside.Split("  ")[^1]
            : string.Join(' ',
                lines[..at].Reverse().TakeWhile(one => one.StartsWith('#')).Reverse()
                .Select(one => one.TrimStart('#').Trim())).Split(": ")[^1];
        return say.Split(", ", StringSplitOptions.TrimEntries);
    }

    private static string Below(string text, string section, string line)
    {
        var at = text.IndexOf($"\n{section}:", StringComparison.Ordinal) + 1;
        return text[at..text.IndexOf($"\n  {line}:", at, StringComparison.Ordinal)] + $"\n  {line}:";
    }

    /// <param name="but">A question that may be asked where an example shows only how figures are written.</param>
    private static bool Reads(string text, string upTo, string example, string? but = null)
    {
        var end = text.IndexOf(upTo, StringComparison.Ordinal) + upTo.Length;
        var filled = text[..end] + " " + example + text[text.IndexOf('\n', end)..];
        JobReader.Read("start.job.yaml", filled, TheBook.Book.Vocabulary).Problems.Where(problem => problem.Code != but)
            .Select(problem => problem.Say).Should().BeEmpty($"{upTo} {example}");
        return true;
    }

    [GeneratedRegex(@"\bnone\b|plan [0-9]+|[0-9]+-1/2( in)?|[0-9]'-[0-9]""|165( mm)?|16\.5 cm|2 (above|below)")]
    private static partial Regex Value();
}
