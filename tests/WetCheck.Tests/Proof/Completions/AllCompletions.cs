using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Model;
using WetCheck.Proving;

namespace WetCheck.Tests.Proof;

/// <summary>
/// Brute force: small jobs completed in all ways. Nothing that the engine says before is contradicted by a completion, and what all
/// completions agree on the engine says.
/// </summary>
public sealed class AllCompletions(ITestOutputHelper output)
{
    private static readonly RuleBook Book = TheBook.Book;
    private static readonly PlainEvaluator Plain = new(Book.Rules);
    private static readonly ILookup<PartKind, Reads> ByPart = Book.Rules.Where(rule => rule.Body is RuleBody.Require)
        .Select(Studied.Of(Book).Reads).ToLookup(reads => reads.Rule.Part);
    private int _completions;

    [Fact]
    public void The_engine_says_what_all_completions_say()
    {
        var all = Enumerable.Range(0, Depth.Jobs).SelectMany(number => Agreements(SmallJob.Of(number, Book))).ToList();
        var decided = all.Where(one => one.IsDecided).ToList();
        var silent = decided.Where(one => !one.IsSaid).ToList();
        output.WriteLine($"{_completions} completions; {decided.Count} checks decided by them, "
            + $"{decided.Count - silent.Count} of these by the engine");
        foreach (var rule in silent.GroupBy(one => one.Rule).OrderByDescending(rule => rule.Count()))
        {
            output.WriteLine($"{rule.Key} {rule.Count()}: {rule.First()}");
        }

        all.Where(one => one.IsContradicted).Should().BeEmpty();
        (100.0 * (decided.Count - silent.Count) / decided.Count).Should().BeGreaterThanOrEqualTo(95);
    }

    private IEnumerable<Agreement> Agreements(SmallJob small)
    {
        var name = $"job {small.Number} without {string.Join(", ", small.Blanks.Select(blank => blank.Of))}";
        var readers = new Readers(small.Blanks, ByPart);
        var mayContradict = small.Blanks.Any(blank => blank.MayContradict);
        var completed = new Dictionary<(string Rule, string Part), HashSet<Result>>();
        foreach (var job in small.Completions())
        {
            _completions++;
            var states = Derive.From(job, Book.Vocabulary);
            var reading = readers.On(states);
            if (mayContradict
                && Contradiction.In(states,
                [.. reading.Select(one => one.Reads.Rule).Distinct().SelectMany(Studied.Of(Book).LimitsIn).Distinct()]))
            {
                continue;
            }

            foreach (var (check, result) in Judged(job, states, reading))
            {
                (completed.TryGetValue(check, out var results) ? results : completed[check] = []).Add(result);
            }
        }

        var known = Derive.From(small.Job, Book.Vocabulary);
        return Judged(small.Job, known, readers.On(known))
            .Where(one => completed.ContainsKey(one.Key))
            .Select(one => new Agreement(name, one.Key.Rule, one.Key.Part, one.Value, completed[one.Key]));
    }

    /// <summary>The checks that read something that was not known.</summary>
    private static Dictionary<(string Rule, string Part), Result> Judged(
        Job job, IReadOnlyList<PartState> states, IReadOnlyList<(Reads Reads, PartState State)> reading)
    {
        var conclusions = reading.Any(one => one.Reads.Conclusions) ? Plain.Conclude(states) : [];
        return reading.ToDictionary(
            one => (one.Reads.Rule.Id, one.State.Part.Id),
            one => ResultOf(job, Plain.Of(one.Reads.Rule, one.State, states, conclusions)));
    }

    private static Result ResultOf(Job job, Judgement judgement) => judgement.Now switch
    {
        Outcome.Ok => Result.Ok,
        Outcome.NotHere => Result.NotHere,
        Outcome.Correction => Result.Correction,
        _ => Owed.Of(job, Book.Vocabulary, judgement.Hangs),
    };
}
