using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using WetCheck.Geometry;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Tests.Cli;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.LevelReadings;

/// <summary>From a table of levels beside a job through the commands.</summary>
public sealed class FloorsOfJobs
{
    private const string Head =
        "job: Elm (invented)\nmethod: liner under mortar\nunits: inches\nplumbing code: IRC 2021\naccess standard: "
        + "none\nreadings by: laser\n";
    private const string Floor = "floor: { judged: along any path, figure: inches }\n";
    private const string Size = "  size: 60 x 36 finished\n";
    private const string Place = "  drain at: 30, 18\n";
    private const string Point = "drain: { form: point, grate: 4-1/4, grate shape: square }\n";
    private const string Job = Head + "shower:\n" + Size + Place + Point + Floor;
    private static readonly JsonSchema s_schema = JsonSchema.FromText(Repository.Read("docs/schemas/pan.schema.json"));

    [Theory]
    [InlineData(0.25, 6)]
    [InlineData(0.26, 3)]
    public void A_perfect_pan_is_no_correction(double valley, double grid)
    {
        var (code, text, _) = Run(Job, Table(Floors.Falling(valley), grid), "pan", "elm", "--sheet", "levels");
        code.Should().NotBe(1).And.NotBe(4);
        text.Should().Contain("None shows.").And.NotContain("Under the least").And.NotContain("SHAVE");
        text.Should().Contain($"narrower than {2 * grid}\" can hide");
        Walk(Job, Table(Floors.Falling(valley), grid)).Where(entry => IsOfFalls(entry)).Should()
            .NotContain(entry => entry.Result == Result.Correction);
    }

    /// <summary>0.2 in per ft on the short walls, where the inch codes ask 1/4 (requirements LN-09).</summary>
    [Fact]
    public void A_pan_too_flat_is_a_correction_of_the_sheet_and_of_the_rule()
    {
        var table = Table(at => 0.5 * Math.Max(Math.Abs(at.X - 30) / 30, Math.Abs(at.Y - 18) / 18), 6);
        var (code, text, _) = Run(Job, table, "pan", "elm", "--sheet", "levels");
        code.Should().Be(1);
        text.Should().Contain("Under the least of 1/4\" per ft");
        Walk(Job, table).Where(entry => entry.Result == Result.Correction).Select(entry => entry.Number).Should()
            .Contain(number => number.StartsWith("133", StringComparison.Ordinal));
    }

    /// <summary>The set is one fact: without it, or without what says where planes lie, there is no verdict of it.</summary>
    [Fact]
    public void What_is_taken_away_makes_no_verdict()
    {
        var table = Table(at => 0.5 * Math.Max(Math.Abs(at.X - 30) / 30, Math.Abs(at.Y - 18) / 18), 6);
        string[] rest =
            [Head + "shower:\n" + Place + Point + Floor, Head + "shower:\n" + Size + Point + Floor,
            Head + "shower:\n" + Size + Place + Floor, Head + "shower:\n" + Size + Place
            + "drain: { grate: 4-1/4, grate shape: square }\n" + Floor];
        Results(Job, table).Should().Contain(Result.Correction);
        Results(Job, null).Should().NotContain(Result.Correction).And.NotContain(Result.Ok);
        rest.Should().AllSatisfy(job => Results(job, table).Should().NotContain(Result.Correction).And.NotContain(Result.Ok));

        static IEnumerable<Result> Results(string job, string? table) =>
            Walk(job, table).Where(entry => IsOfFalls(entry)).Select(entry => entry.Result);
    }

    [Fact]
    public void A_line_that_cant_be_read_is_named_and_the_rest_counts()
    {
        var (code, text, messages) =
            Run(Job, "from left,from entry,up\n0,0,3/4\n60,0,3/5\n60,36,3/4\n30,18,0\n", "pan", "elm", "--sheet",
            "levels");
        code.Should().Be(4);
        messages.Should().Contain("elm.levels.csv:3:6");
        text.Should().Contain("3 points");
    }

    [Fact]
    public void Levels_in_the_job_and_beside_it_are_asked_about()
    {
        var job = Job.Replace("floor: {", "floor: { levels: \"0,0 3/4 30,18 0\",", StringComparison.Ordinal);
        Run(job, null, "pan", "elm", "--sheet", "levels").Text.Should().Contain("2 points");
        var both = Run(job, "from left,from entry,up\n0,0,1/2\n30,18,0\n", "pan", "elm", "--sheet", "levels");
        both.Messages.Should().Contain("elm.levels.csv:1:1");
        both.Text.Should().Contain("two sets disagree");
    }

    /// <summary>A rod read down from a laser, a level line above: the same floor.</summary>
    [Fact]
    public void Down_from_a_line_is_up_with_another_sign()
    {
        var up = Notation.ReadLevels("0,0 3/4; 30, 18 -1/8; 7-1/2,36 1 1/4", Unit.Inch).Value!.Points.All;
        up.Should().Equal((0, 0, 0.75m), (30, 18, -0.125m), (7.5m, 36, 1.25m));
        Notation.ReadLevels("down 0,0 -3/4  30,18 1/8  7-1/2,36 -1-1/4", Unit.Inch).Value!.Points.All.Should().Equal(up);
        Notation.ReadLevels("0,0 19  750,450 0", Unit.Millimetre).Value!.Points.All[0].Up.Should().Be(new Rational(19 * 5, 127));
        foreach (var text in new[] { "", "3/4", "0,0", "0,0 3/4 60", "0,0 3/4 60,", "0,0 over 3", ",", "0,0 3/4 x,y 1" })
        {
            Notation.ReadLevels(text, Unit.Inch).Fault.Should().NotBeNull(text);
        }
    }

    public static TheoryData<string, string?> Jobs => new()
    {
        { "units: inches\n", null },
        { Job, null },
        { Job, Table(Floors.Falling(0.25), 6) },
        { Head + "shower:\n" + Size + Floor, Table(Floors.Falling(0.2), 12) },
        { Head + "shower:\n" + Size + Place + Floor, Table(Floors.Falling(0.2), 12) + "66,12,3/4\n" },
        { Job, Table(at => Floors.Falling(0.3)(at) - (at == new PlanPoint(12, 18) ? 0.25 : at == new PlanPoint(48, 12) ? -0.5 : 0), 6) },
        { "units: inches\nshower:\n  outline: 60 x 60 less 24 x 24 at right-back\n  drain at: 48, 12\n", Table(at => at.Y / 48, 12) },
        { "units: inches\nshower:\n  outline: 60 x 36\n  drain at: 30, 34\ndrain: { form: channel, grate: 4, channel "
            + "length: 60, channel runs: side to side }\n", Table(at => (36 - at.Y) / 48, 6) },
        { "units: millimetres\nplumbing code: NCC 2022\nbuilding code: NCC 2022\nshower:\n  size: 1500 x 900 "
            + "finished\n  drain at: 750, 450\n", "from left,from entry,up\n0,0,19\n1500,0,19\n750,450,0\n750,0,18\n" },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_sheet_fits_a_screen_in_two_languages_and_its_json_keeps_to_the_schema(string job, string? table)
    {
        foreach (var language in new[] { "en", "es" })
        {
            var text = Run(job, table, "pan", "elm", "--sheet", "levels", "--lang", language).Text;
            text.Split('\n').Should().OnlyContain(line => line.Length <= 78);
            text.Should().NotContain("{").And.NotContain("NaN").And.NotContain("∞");
            text.Replace('\n', ' ').TrimEnd().Should().EndWith(TheBook.Book.Words[language]["close.record"]);
        }

        using var document = JsonDocument.Parse(Run(job, table, "pan", "elm", "--format", "json").Text);
        var result = s_schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        (result.Details ?? []).Append(result).Where(d => d.Errors is { Count: > 0 })
            .Select(d => $"{d.InstanceLocation} {string.Join(" ", d.Errors!.Values)}").Should().BeEmpty();
        JsonNode.Parse(document.RootElement.GetRawText())!["levels"]!["readings"]!.GetValue<int>().Should()
            .Be(table is null ? 0 : table.Split('\n').Length - 2);
    }

    [Fact]
    public void The_guide_shows_what_its_job_prints()
    {
        var job = Fence.All.Single(fence => fence.File == "docs/levels.md" && fence.Sort == "job").Text;
        var shown = Repository.Read("docs/levels.md").Split("```text\n")
            .Single(block => block.StartsWith("READINGS", StringComparison.Ordinal)).Split("```")[0];
        Run(job, null, "pan", "elm", "--sheet", "levels").Text.Should().Contain(shown);
    }

    private static bool IsOfFalls(Entry entry) => entry.Rule.Id is "floor/fall-least" or "floor/fall-most" or "floor/valley-fall";

    private static IEnumerable<Entry> Walk(string job, string? table)
    {
        var read = JobReader.Read("elm.job.yaml", job, TheBook.Book.Vocabulary).Job!;
        return TheBook.Walk(LevelFile.Apply(read, TheBook.Book.Vocabulary, "elm.levels.csv", table).Job).Entries;
    }

    private static (int Code, string Text, string Messages) Run(string job, string? table, params string[] typed)
    {
        using var desk =
            new Desk([("elm.job.yaml", job),
            .. table is null ? Array.Empty<(string, string)>() : [("elm.levels.csv", table)]]);
        var ran = desk.Run(typed);
        return (ran.Code, ran.Results, ran.Messages);
    }

    private static string Table(Func<PlanPoint, double> floor, double grid) =>
        "from left,from entry,up\n" + string.Concat(Floors.Grid(grid).WithDrain().Select(at =>
        string.Create(CultureInfo.InvariantCulture, $"{at.X},{at.Y},{Math.Round(floor(at) * 16) / 16}\n")));
}
