using static WetCheck.Tests.Pan.FloorOfAJob;

namespace WetCheck.Tests.Pan;

/// <summary>What is not known is said with its line, and never guessed.</summary>
public sealed class NotKnownYet
{
    [Theory]
    [InlineData("", "no-floor", "shower.size")]
    [InlineData("shower: { size: 60 x 36 to studs }\n", "size-not-finished", "shower.size")]
    [InlineData("shower: { size: 60 x 36 }\n", "size-not-finished", "shower.size")]
    [InlineData("shower: { size: \"36 x 36 finished, floor 1100 sq in\" }\n", "floor-no-rectangle", "shower.outline")]
    [InlineData("shower: { size: [ 60 x 36 finished, 62 x 36 finished ] }\n", "floor-clash", "shower.size")]
    [InlineData("shower: { size: 60 x 36 finished, drain at: \"70, 18\" }\n", "drain-outside", "shower.drain at")]
    [InlineData("shower: { size: 62 x 36 finished, outline: 60 x 36, drain at: \"30, 18\" }\n", "floor-differs", "shower.size")]
    [InlineData("drain: { grate: 4 }\n", "no-grate-shape", "drain.grate shape")]
    [InlineData("drain: { form: channel }\n", "no-channel-length", "drain.channel length")]
    public void It_is_named(string job, string kind, string line)
    {
        var (code, json, _) = Told(Inches + job);
        json["missing"]!.AsArray().Select(missing => ((string)missing!["kind"]!, (string)missing["line"]!)).Should().Contain((kind, line));
        code.Should().Be(3);
    }

    [Fact]
    public void What_it_says_to_write_can_be_written()
    {
        var all = new Dictionary<string, string>
        {
            ["shower.size"] = "60 x 36 finished",
            ["shower.drain at"] = "30, 18",
            ["drain.grate"] = "4-1/4",
            ["drain.grate shape"] = "square",
        };
        var job = Inches;
        for (var steps = 0; steps < 4; steps++)
        {
            var missing = Told(job).Json["missing"]!.AsArray().ToList();
            missing.Should().OnlyContain(one => all[(string)one!["line"]!] == (string)one["write"]!);
            job = Inches + string.Concat(all.Take(steps + 1).GroupBy(line => line.Key.Split('.')[0])
                .Select(section =>
                    $"{section.Key}:\n{string.Concat(section.Select(line => $"  {line.Key.Split('.')[1]}: {line.Value}\n"))}"));
        }

        Told(job).Json["missing"]!.AsArray().Should().BeEmpty();
    }

    [Fact]
    public void Codes_without_a_fall_in_the_book_are_named()
    {
        var (code, json, _) = Told("units: millimetres\nplumbing code: NBC 2020\nbuilding code: NBC 2020\n" + Rectangle(900, 900));
        (code, json["limits"]!.AsArray().Count, (string)json["without_limits"]![0]!).Should().Be((3, 0, "NBC"));
    }
}
