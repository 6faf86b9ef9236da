using WetCheck.Fuzz;

namespace WetCheck.Tests.Intake;

/// <summary>A few inputs of the fuzz program each day; <c>tests/WetCheck.Fuzz</c> makes a million.</summary>
public sealed class FuzzedInputs
{
    /// <summary>Seeds that failed once, and the first few hundred.</summary>
    [Fact]
    public void Are_taken_or_told()
    {
        foreach (var seed in Enumerable.Range(1, 400).Concat([1000, 1075, 1136]))
        {
            Batch.Fault(seed).Should().BeNull($"of seed {seed}");
        }
    }

    [Fact]
    public void The_same_seed_is_the_same_text()
    {
        var texts = Enumerable.Range(0, 2).Select(_ => Mutation.Of(Seeds.Jobs[0], new Random(7))).ToList();
        texts[0].Should().Be(texts[1]).And.NotBe(Seeds.Jobs[0]);
    }
}
