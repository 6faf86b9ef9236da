using WetCheck.Engine;
using WetCheck.Flow;
using WetCheck.Geometry;
using WetCheck.Model;
using WetCheck.Proving;

namespace WetCheck.Tests.Proof;

/// <summary>A kept session, a fresh one and the plain evaluator say the same, whatever changed and in whatever order rules stand.</summary>
public sealed class ThreeWays
{
    private static readonly int Jobs = Depth.Of(daily: 40, deep: 500, night: 5000);

    /// <summary>Jobs until one differs; most cuts show on the first.</summary>
    private const int AtMost = 500;
    private const int Changes = 3;
    private const int Orders = 8;

    private static readonly RuleBook Book = TheBook.Book;
    private static readonly PlainEvaluator Plain = new(Book.Rules);

    [Fact]
    public void Kept_fresh_and_plain_agree_after_changes()
    {
        var shuffled =
            Enumerable.Range(0, Orders)
            .Select(seed => new ReadyBook(Book with { Rules = new Dice(seed).Shuffled(Book.Rules) })).ToList();
        for (var number = 0; number < Jobs; number++)
        {
            var first = Drawn.Of(number, Book).Job;
            var kept = new KeptWalk(first, shuffled[number % Orders]);
            foreach (var job in Changed(first, number))
            {
                kept.Change(job);
                Spoken.Of(kept.Findings, kept.Conclusions).Should().Equal(ByHand(job), $"kept, job {number}");
            }

            var fresh = TheBook.Ready.Compiled.Open(Derive.From(kept.Job, Book.Vocabulary));
            Spoken.Of(fresh.Findings, fresh.Conclusions).Should().Equal(ByHand(kept.Job), $"fresh, job {number}");
        }
    }

    /// <summary>Each join and each production is needed: without it some job is judged otherwise.</summary>
    [Theory]
    [InlineData(CutWhat.Nearest)]
    [InlineData(CutWhat.Related)]
    [InlineData(CutWhat.Conclusions)]
    [InlineData(CutWhat.Rules)]
    [InlineData(CutWhat.Climbs)]
    public void Without_a_join_or_a_production_some_verdict_differs(object what)
    {
        var cut = new CompiledBook(Book.Rules, new Cut((CutWhat)what));
        Enumerable.Range(0, AtMost).Any(number => Differs(number, cut)).Should().BeTrue();
    }

    private static bool Differs(int number, CompiledBook cut)
    {
        var first = Drawn.Of(number, Book).Job;
        var states = new DerivedStates(first, Book.Vocabulary);
        var session = cut.Open([.. states.All]);
        foreach (var job in Changed(first, number))
        {
            var (gone, come) = states.Change(job);
            session.Change(gone, come);
        }

        var plain = Plain.Of([.. states.All]).Findings;
        return !Spoken.Verdicts(session.Findings).SequenceEqual(Spoken.Verdicts(plain));
    }

    private static IEnumerable<Job> Changed(Job job, int number)
    {
        var dice = new Dice(number);
        for (var change = 0; change < Changes; change++)
        {
            yield return job = Change.Of(job, Drawn.Of(dice.Next(0, 10_000), Book).Job, dice);
        }
    }

    private static IEnumerable<string> ByHand(Job job)
    {
        var (findings, conclusions) = Plain.Of(Derive.From(job, Book.Vocabulary));
        return Spoken.Of(findings, conclusions);
    }
}
