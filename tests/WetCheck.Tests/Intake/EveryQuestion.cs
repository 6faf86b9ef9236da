using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>Every kind and every reading of the vocabulary can be answered where the vocabulary says it stands.</summary>
public sealed class EveryQuestion
{
    private static readonly JobLayout Layout = new(BookText.Vocabulary);

    public static TheoryData<string> Paths =>
        [.. Layout.Sections.SelectMany(section => section.Lines.Where(line => line is not Line.Seen)
        .Select(section.PathOf))];

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_line_takes_what_every_line_takes(string path)
    {
        var (section, line) = Layout.Find(path, out _)!.Value;
        var job = Read(section, line!, "?");
        job.Where[path].Line.Should().Be(3);
        job.Parts.Should().Contain(part => part.Part.Kind == line!.Kind && part.Said == Tri.Yes && part.Readings.Count == 0);

        var none = Read(section, line!, "none");
        none.Parts.Any(part => part.Part.Kind == line!.Kind && part.Readings.Count > 0).Should()
            .Be(line is Line.OfReading, "else it speaks of the part");
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_line_takes_the_example_of_its_question(string path)
    {
        var (section, line) = Layout.Find(path, out _)!.Value;
        var reading = line is Line.OfReading own ? own.Reading : line!.Kind.Find(line.Kind.Main!)!;
        var job = Read(section, line, reading.Example);
        job.Parts.Where(part => part.Part.Kind == line.Kind).SelectMany(part => part.Of(reading.Name)).Should().NotBeEmpty(reading.Example);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_line_takes_every_one_of_its_words(string path)
    {
        var (section, line) = Layout.Find(path, out _)!.Value;
        var reading = line is Line.OfReading own ? own.Reading : line!.Kind.Find(line.Kind.Main!)!;
        foreach (var choice in reading.Choices)
        {
            var read = Read(section, line, "plan " + choice.Key).Parts.Where(part => part.Part.Kind == line.Kind)
                .SelectMany(part => part.Of(reading.Name)).ToList();
            read.Should().OnlyContain(one => one.Planned && one.Value == new ReadingValue.OfChoice(choice.Key)).And.NotBeEmpty();
        }
    }

    [Fact]
    public void Other_readings_of_a_member_are_named_on_its_line()
    {
        foreach (var section in Layout.Sections)
        {
            foreach (var line in section.Lines.Where(line => line is Line.OfPlace or Line.OfKind))
            {
                foreach (var reading in line.Kind.Readings.Where(reading => !reading.Derived
                    && reading.Name != line.Kind.Main && reading.Is != Form.Choice))
                {
                    Read(section, line, $"{reading.Name} {reading.Example}")
                        .Parts.SelectMany(part => part.Of(reading.Name)).Should().NotBeEmpty(section.PathOf(line));
                }
            }
        }
    }

    /// <summary>Questions whether it is meant are let pass: the example stands alone in its file.</summary>
    private static Job Read(Section section, Line line, string answer)
    {
        var text = $"units: inches\n{section.Name}:\n  {line.Name}: {answer}\n";
        var (job, problems) = JobReader.Read("test.job.yaml", text, BookText.Vocabulary);
        problems.Where(problem => problem.Effect != Effect.Asked).Select(problem => problem.Say).Should().BeEmpty(text);
        return job!;
    }
}
