using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Shows;

/// <summary>An outline that is no rectangle takes floor from the size beside it; the size counts again with the floor's own area.</summary>
public sealed class OutlinesAndSizes
{
    private const string Head =
        "job: an L (invented)\nmethod: liner under mortar\nunits: inches\nplumbing code: UPC 2021\ncurb:\n  width: "
        + "1\nshower:\n  outline: 33 x 33 less 12 x 12 at right-back\n";

    /// <summary>UPC 408.6 asks 1024 sq in: requirements SG-06, second-hand. 33 x 33 is 1089 as a rectangle, 945 as this L.</summary>
    [Theory]
    [InlineData("33 x 33 finished", Result.ToCheck)]
    [InlineData("33 x 33 finished, floor 945 sq in", Result.Correction)]
    [InlineData("33 x 33 finished, floor 1024 sq in", Result.Ok)]
    public void A_size_alone_never_makes_a_smaller_floor_large_enough(string size, object result) =>
        Size($"{Head}  size: {size}\n").Should().Be((Result)result);

    [Fact]
    public void An_outline_that_comes_later_counts_alike()
    {
        var job = TheBook.Job("job: an L (invented)\nmethod: liner under mortar\nunits: inches\nplumbing code: UPC "
            + "2021\ncurb:\n  width: 1\nshower:\n  size: 33 x 33 finished\n");
        Of(job).Should().Be(Result.Ok);
        Of(TheBook.With(job, "shower.outline: 33 x 33 less 12 x 12 at right-back")).Should().Be(Result.ToCheck);
        Of(TheBook.With(job, "shower.outline: 33 x 33")).Should().Be(Result.Ok);
    }

    private static Result Size(string text) => Of(JobReader.Read("l.job.yaml", text, TheBook.Book.Vocabulary).Job!);

    private static Result Of(Job job) => TheBook.Walk(job).Entries.Single(entry => entry.Number == "101").Result;
}
