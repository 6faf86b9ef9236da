using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Shows;

/// <summary>The invented examples: a faulty one raises what was planted and nothing else; a sound job raises nothing.</summary>
public sealed partial class Examples
{
    /// <summary>Each method once in inches and once in millimetres.</summary>
    public static TheoryData<string> Sound =>
    [
        "docs/examples/juniper-made-right", "tests/jobs/wattle", "docs/examples/spruce", "tests/jobs/acacia", "tests/jobs/cedar",
        "docs/examples/banksia", "tests/jobs/hickory", "tests/jobs/kurrajong", "tests/jobs/sycamore", "tests/jobs/quandong",
    ];

    /// <summary>A liner pan, a formed tray, a tub.</summary>
    public static TheoryData<string> Faulty => ["juniper", "larch", "elder"];

    [Theory]
    [MemberData(nameof(Faulty))]
    public void A_faulty_job_raises_every_planted_fault_and_no_other(string name)
    {
        var walk = TheBook.Walk(TheBook.Example(name));
        walk.ToFix.Select(entry => (entry.Number, TheBook.Said(entry), Line(entry))).Should().BeEquivalentTo(Planted(name));
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void At_the_last_stop_every_check_is_ok_or_not_here(string name)
    {
        var walk = TheBook.Walk(Job(name));
        walk.Job.Stage.Should().Be("last");
        walk.Verdict.Should().Be(Verdict.NothingOwed);
        walk.Checks.Where(check => check.Result is not Result.Ok and not Result.NotHere)
            .Select(check => $"{check.Rule.Id} {check.Part} {check.Result}").Should().BeEmpty();
        walk.Entries.Count(entry => entry.Result == Result.Ok).Should()
            .BeGreaterThanOrEqualTo(walk.Entries.Count(entry => entry.Result == Result.NotHere));
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void At_every_stop_and_as_a_plan_no_correction(string name)
    {
        var job = Job(name);
        foreach (var stop in job.Method!.Stops)
        {
            var text = Repository.Read($"{name}.job.yaml").Replace("stage: last", $"stage: {stop.Name}", StringComparison.Ordinal);
            var walk = TheBook.Walk(text);
            walk.ToFix.Select(entry => entry.Number).Should().BeEmpty(stop.Name);
            var planned = walk.Job with { Parts = [.. walk.Job.Parts.Select(Planned)] };
            TheBook.Walk(planned).ToFix.Select(entry => entry.Number).Should().BeEmpty($"as a plan, {stop.Name}");
        }
    }

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_sound_job_answers_every_question_of_its_method(string name)
    {
        var job = Job(name);
        job.Method!.Asks.Concat(job.Method.AsksAfter).Where(line => !job.Where.ContainsKey(line)).Should().BeEmpty();
    }

    [Fact]
    public void The_sound_bonded_room_is_never_asked_for_liner_weeps_or_slope_under_it()
    {
        foreach (var stop in TheBook.Example("spruce").Method!.Stops)
        {
            var walk = TheBook.Walk(Repository.Read("docs/examples/spruce.job.yaml")
                .Replace("stage: last", $"stage: {stop.Name}", StringComparison.Ordinal));
            walk.Looks.SelectMany(look => look.Parts).Select(part => part.Kind.Name).Should()
                .NotContain(["liner", "liner side", "liner facet", "pre-slope", "seam", "fastener"]);
            walk.Looks.Select(look => look.Reading?.Name).Should().NotContain("weeps");
        }
    }

    [Fact]
    public void Five_answers_give_no_correction()
    {
        var walk = TheBook.Walk(TheBook.Example("five-answers"));
        walk.ToFix.Should().BeEmpty();
        walk.Looks.Should().NotBeEmpty();
    }

    [Fact]
    public void The_sound_jobs_are_each_method_in_both_units() =>
        Sound.Select(row => Job(row.Data)).Select(job => (job.Method!.Name, job.Metric))
        .Should().BeEquivalentTo(TheBook.Book.Vocabulary.Methods.SelectMany(method =>
            new[] { (method.Name, (bool?)false), (method.Name, true) }));

    private static Job Job(string name) => TheBook.Job(Repository.Read($"{name}.job.yaml"), $"{name}.job.yaml");

    private static JobPart Planned(JobPart part) => part with
    {
        Readings = part.Readings.ToDictionary(pair => pair.Key, pair => (IReadOnlyList<Reading>)[.. pair.Value.Select(AsPlan)]),
    };

    private static Reading AsPlan(Reading reading) =>
        reading.Value is ReadingValue.OfNone or ReadingValue.OfHidden ? reading : reading with { Planned = true };

    /// <summary>The line of the reading that falls short.</summary>
    private static int Line(Entry entry) => entry.Worst.Sides.SelectMany(side => side.Tests)
        .First(test => test.Answer == Tri.No && test.Fact?.Counted is not null).Fact!.Counted!.At.Line;

    private static IEnumerable<(string, string, int)> Planted(string name) =>
        PlantedLine().Matches(Repository.Read($"docs/examples/{name}.planted.yaml"))
        .Select(match =>
            (match.Groups["number"].Value, match.Groups["result"].Value,
            int.Parse(match.Groups["line"].Value, System.Globalization.CultureInfo.InvariantCulture)));

    [GeneratedRegex("""number: "?(?<number>[\w-]+)"?, result: (?<result>[a-z -]+), line: (?<line>\d+)""")]
    private static partial Regex PlantedLine();
}
