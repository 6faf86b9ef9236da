using WetCheck.Model;

namespace WetCheck.Tests.Shows;

/// <summary>Honest disputes of the field notes (D-xx): both sides while the decider is unknown, one when it is known.</summary>
public sealed class Disputes
{
    private const string Liner = "method: liner under mortar\nunits: inches\n";

    [Fact]
    public void D01_least_fall_square_to_the_wall_or_along_any_path()
    {
        // 60 x 36, rim 5/8: 0.25 in per ft square to the short walls, 0.214 along the folds (computed: O-05).
        const string floor = Liner + "stage: before tile\nshower: { size: 60 x 36 finished, drain at: \"30, 18\" }\nfloor: { rim: 5/8 }\n";
        Of(floor + "plumbing code: IRC 2021\n", 135).Should().OnlyContain(check => check.Result == Result.ToCheck && Shows(check, Outcome.Correction, Outcome.NotHere));
        Of(floor + "plumbing code: IRC 2021\naccess standard: A117.1\n", 135).Should().OnlyContain(check => check.Result == Result.Correction && check.Sides.All(side => side.Outcome == Outcome.Correction));
        const string metric = "method: curbless bonded\nunits: millimetres\nstage: last\nshower: { size: 1500 x 900 finished, drain at: \"750, 450\" }\nfloor: { rim: 10 }\n";
        Of(metric + "plumbing code: NCC 2022\nbuilding code: NCC 2022\n", 135).Should().OnlyContain(check => check.Result == Result.NotHere);
        Of(metric + "plumbing code: NCC 2022\nbuilding code: NCC 2022\n", 133).Should().OnlyContain(check => check.Result == Result.Ok);
    }

    [Fact]
    public void D04_liner_turn_up()
    {
        const string liner = Liner + "stage: flood test\ncurb: { cap adds: 1 }\nliner: { left: 3-1/2 }\n";
        var unknown = Of(liner, 214).Single(check => check.Part.Place!.Name == "left");
        unknown.Result.Should().Be(Result.ToCheck);
        Limits(unknown).Should().BeEquivalentTo([2m, 3m]);
        Of(liner + "plumbing code: IRC 2021\n", 214).Single(check => check.Part.Place!.Name == "left").Should()
            .Match<Check>(check => check.Result == Result.Ok && Limits(check).SequenceEqual(new[] { 2m }));
        Of(liner + "plumbing code: UPC\n", 214).Single(check => check.Part.Place!.Name == "left").Should()
            .Match<Check>(check => check.Result == Result.Correction && Limits(check).SequenceEqual(new[] { 3m }));
    }

    [Fact]
    public void D06_board_end_and_the_bed()
    {
        const string board = Liner + "stage: before bed\nplumbing code: IRC 2021\n";
        var unknown = Of(board + "board: { bottom: left 3/4 into bed }\n", 305).Single(check => check.Part.Place!.Name == "left");
        unknown.Result.Should().Be(Result.ToCheck);
        Sides(unknown).Should().BeGreaterThan(1);
        Of(board + "board: { kind: paper gypsum, bottom: left 3/4 into bed }\n", 305).Should().Contain(check => check.Result == Result.Correction);
        Of(board + "building: { detail: B415 }\nboard: { kind: cement, bottom: left 3/4 into bed }\n", 305).Should().NotContain(check => check.Result == Result.Correction);
    }

    [Fact]
    public void D45_least_size()
    {
        var unknown = Of(Liner + "shower: { size: 30 x 30 finished }\n", 101).Single();
        unknown.Result.Should().Be(Result.ToCheck);
        unknown.Judgement.Sides.Select(side => side.Outcome).Should().Contain([Outcome.Ok, Outcome.Correction]);
        Of(Liner + "plumbing code: IRC 2021\nshower: { size: 30 x 30 finished }\n", 101).Single().Result.Should().Be(Result.Ok);
        Of(Liner + "plumbing code: UPC\nshower: { size: 30 x 30 finished }\n", 101).Single().Result.Should().Be(Result.Correction);
    }

    private static List<Check> Of(string job, int rule) => [.. TheBook.Walk(job).Checks.Where(check => check.Rule.Number == rule)];

    private static bool Shows(Check check, params Outcome[] outcomes) => outcomes.All(outcome => check.Judgement.Sides.Any(side => side.Outcome == outcome));

    private static int Sides(Check check) => check.Judgement.Sides.Count;

    private static IEnumerable<decimal> Limits(Check check) => check.Judgement.Sides
        .SelectMany(side => side.Versions).Select(version => version.Limit).OfType<Quantity>().Select(limit => (decimal)limit.Value.Approximate).Distinct().Order();
}
