using WetCheck.Geometry;
using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>
/// Work grows with what is typed and no faster. What would not end without the limits ends under a watchdog far above
/// what it takes on a slow
/// machine; nothing else here depends on time.
/// </summary>
public sealed class MuchOfOneThing
{
    private static readonly TimeSpan Watchdog = TimeSpan.FromSeconds(60);

    private const string Finished =
        "method: liner under mortar\nunits: inches\nstage: before grout\nplumbing code: IRC 2021\nshower:\n  size: 60 "
        + "x 36 finished\n  drain at: 30, 18\ndrain:\n  grate: 4-1/4\n";

    [Fact]
    public async Task A_line_of_blanks_between_two_letters() =>
        (await Ends(() => Read($"notes: |\n  x{new string(' ', 400_000)}y\n"))).Should().BeEmpty();

    [Fact]
    public async Task A_line_of_tabs_with_a_letter_behind() =>
        (await Ends(() => Read($"{new string('\t', 400_000)}x\n"))).Should().NotBeEmpty();

    [Fact]
    public async Task Many_layers() =>
        (await Ends(() => Read($"units: inches\nwalls:\n  layers: {string.Join(", ", Enumerable.Repeat("felt", 50_000))}\n")))
            .Should().ContainSingle(problem => problem.Code == "too-many-layers");

    [Fact]
    public async Task As_many_layers_as_are_taken_are_walked() =>
        (await Ends(() =>
            TheBook.Walk($"{Finished}walls:\n  layers: "
                + $"{string.Join(", ", Enumerable.Repeat("felt", Limits.Layers))}\n"))).Entries.Should().NotBeEmpty();

    [Theory]
    [InlineData("liner.left", "3")]
    [InlineData("nails.left", "3 above")]
    public async Task As_many_answers_as_a_log_takes(string path, string read)
    {
        var log = string.Concat(Enumerable.Range(0, Limits.LogAnswers)
            .Select(i =>
            $"{{\"at\":\"2026-11-25T16:05:00.{i % 1000:000}Z\",\"path\":\"{path}\",\"read\":\"{read}\",\"by\":\"{i}\"}}\n"));
        var (answers, problems) = LogReader.Read("j.log.jsonl", log);
        answers.Should().HaveCount(Limits.LogAnswers);
        problems.Should().BeEmpty();
        var (job, _) = await Ends(() => JobLog.Apply(TheBook.Job("units: inches\n"), TheBook.Book.Vocabulary, answers));
        var of = job.Parts.Where(part => part.Part.Place?.Name == "left");
        of.Sum(part => part.Readings.Values.Sum(readings => readings.Count)).Should().BeGreaterThanOrEqualTo(Limits.LogAnswers);
    }

    [Theory]
    [InlineData(1200, 36)]
    [InlineData(1200, 0.01)]
    [InlineData(1200, 1200)]
    public async Task The_circle_of_the_longest_floor(double width, double depth) =>
        (await Ends(() => InscribedCircle.Of(Outline.Rectangle(width, depth)))).Radius.Should()
            .BeApproximately(Math.Min(width, depth) / 2, 0.013);

    [Theory]
    [InlineData(120)]
    [InlineData(24)]
    [InlineData(1)]
    public async Task Contours_of_as_many_levels_as_are_taken(int height)
    {
        var chance = new Random(height);
        var points =
            Enumerable.Range(0, Limits.Levels)
            .Select(_ =>
            new LevelPoint(new PlanPoint(chance.NextDouble() * 60, chance.NextDouble() * 36),
            chance.NextDouble() * height, 0.03125));
        var contours = await Ends(() => Contours.Of(new LevelSurface([.. points], Outline.Rectangle(60, 36)), 0, 0.125));
        contours.Select(contour => contour.Height).Distinct().Should().HaveCountLessThanOrEqualTo(Limits.Contours + 1)
            .And.HaveCountGreaterThan(4);
    }

    private static IReadOnlyList<Problem> Read(string text) => JobReader.Read("much.job.yaml", text, BookText.Vocabulary).Problems;

    private static async Task<T> Ends<T>(Func<T> work)
    {
        var done = Task.Run(work, TestContext.Current.CancellationToken);
        (await Task.WhenAny(done, Task.Delay(Watchdog, TestContext.Current.CancellationToken))).Should().BeSameAs(done, "it ends");
        return await done;
    }
}
