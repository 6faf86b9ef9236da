using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// Knowing less never makes an OK or a Correction. Every job loses all that is known of it, one by one in a random order.
/// </summary>
public sealed class ThePromise(ITestOutputHelper output)
{
    [Fact]
    public void No_loss_makes_an_ok_or_a_correction_on_drawn_jobs()
    {
        var (losses, divided, limits) = (0, 0, Limit.Of(TheBook.Book));
        var faults = new List<string>();
        for (var number = 0; number < JobCount.Of; number++)
        {
            var job = Drawn.Of(number, TheBook.Book).Job;
            if (Contradiction.In(Derive.From(job, TheBook.Book.Vocabulary), limits))
            {
                divided++;
                continue;
            }

            losses += LoseAll(job, new Dice(number), $"job {number}", faults);
        }

        output.WriteLine($"{losses} losses on {JobCount.Of - divided} jobs; {divided} contradict themselves as read");
        faults.Should().BeEmpty();
    }

    [Fact]
    public void No_loss_makes_an_ok_or_a_correction_on_the_examples()
    {
        var losses = 0;
        var faults = new List<string>();
        foreach (var name in Conventions.Repository.In("docs/examples/", ".job.yaml").Select(file => System.IO.Path.GetFileName(file)[..^".job.yaml".Length]))
        {
            for (var seed = 0; seed < 10; seed++)
            {
                losses += LoseAll(TheBook.Example(name), new Dice(seed), name, faults);
            }
        }

        output.WriteLine($"{losses} losses");
        faults.Should().BeEmpty();
    }

    private static int LoseAll(Job job, Dice dice, string name, List<string> faults)
    {
        var kept = new KeptWalk(job, TheBook.Ready);
        var before = Outcomes.Of(kept.Findings);
        var count = 0;
        while (Losses.Of(job, TheBook.Book.Vocabulary, dice) is { Count: > 0 } all)
        {
            var loss = dice.Pick(all);
            kept.Change(job = loss.After);
            var after = Outcomes.Of(kept.Findings);
            faults.AddRange(Outcomes.New(before, after).Select(fault => $"{name}, lost {loss.Of}: {fault}"));
            before = after;
            count++;
        }

        return count;
    }
}
