using WetCheck.Flow;
using WetCheck.Geometry;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Proof;

/// <summary>
/// Knowing less never makes an OK or a Correction. Every job loses all that is known of it, one by one in a random order.
/// </summary>
public sealed class ThePromise(ITestOutputHelper output)
{
    private static readonly int OrdersOfAnExample = Depth.Of(daily: 1, deep: 10, night: 30);

    [Fact]
    public void No_loss_makes_an_ok_or_a_correction_on_drawn_jobs()
    {
        var (losses, divided, limits) = (0, 0, Studied.Of(TheBook.Book).Limits);
        var faults = new List<string>();
        for (var number = 0; number < Depth.Jobs; number++)
        {
            var job = Drawn.Of(number, TheBook.Book).Job;
            if (Contradiction.In(Derive.From(job, TheBook.Book.Vocabulary), limits))
            {
                divided++;
            }
            else
            {
                losses += LossByLoss.All(new KeptWalk(job, TheBook.Ready), TheBook.Book.Vocabulary, new Dice(number),
                    $"job {number}", faults);
            }
        }

        output.WriteLine($"{losses} losses on {Depth.Jobs - divided} jobs; {divided} more contradict themselves as read");
        faults.Should().BeEmpty();
    }

    [Fact]
    public void No_loss_makes_an_ok_or_a_correction_on_the_examples()
    {
        const string Ending = ".job.yaml";
        var losses = 0;
        var faults = new List<string>();
        foreach (var name in Repository.In("docs/examples/", Ending).Select(file => file["docs/examples/".Length..^Ending.Length]))
        {
            for (var seed = 0; seed < OrdersOfAnExample; seed++)
            {
                losses += LossByLoss.All(new KeptWalk(TheBook.Example(name), TheBook.Ready), TheBook.Book.Vocabulary,
                    new Dice(seed), name, faults);
            }
        }

        output.WriteLine($"{losses} losses");
        faults.Should().BeEmpty();
    }
}
