using WetCheck.Flow;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>The promise is the language's, not the book's: it holds for rules drawn at random from the grammar.</summary>
public sealed class ForAnyRule(ITestOutputHelper output)
{
    private const int RulesOfABook = 16;
    private const int JobsOfABook = 4;

    [Fact]
    public void No_loss_makes_an_ok_or_a_correction_whatever_the_rules()
    {
        var (losses, spoke) = (0, 0);
        var faults = new List<string>();
        for (var number = 0; number < Depth.Jobs / JobsOfABook; number++)
        {
            var book = new RuleDrawer(TheBook.Book, new Dice(number)).Book(RulesOfABook);
            var (ready, limits) = (new ReadyBook(book), Studied.Of(book).Limits);
            for (var of = 0; of < JobsOfABook; of++)
            {
                var job = Drawn.Of((number * JobsOfABook) + of, book).Job;
                if (!Contradiction.In(Derive.From(job, book.Vocabulary), limits))
                {
                    var kept = new KeptWalk(job, ready);
                    spoke += Outcomes.Of(kept.Findings).Count(one => one.Value is Outcome.Ok or Outcome.Correction);
                    losses += LossByLoss.All(kept, book.Vocabulary, new Dice(of), $"book {number}, job {of}", faults);
                }
            }
        }

        output.WriteLine($"{losses} losses; {spoke} checks were OK or Correction");
        faults.Should().BeEmpty();
    }
}
