using WetCheck.Engine;
using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// Brute force: small jobs completed in all ways. Nothing that the engine says before is contradicted by a completion, and what all
/// completions agree on the engine says.
/// </summary>
public sealed class AllCompletions(ITestOutputHelper output)
{
    private static readonly RuleBook Book = TheBook.Book;
    private static readonly PlainEvaluator Plain = new(Book.Rules);
    private static readonly IReadOnlyList<Reads> All = [.. Book.Rules.Where(rule => rule.Body is RuleBody.Require).Select(rule => new Reads(rule, Book))];
    private static readonly IReadOnlyList<Limit> Limits = Limit.Of(Book);
    private int _completions;

    [Fact]
    public void The_engine_says_what_all_completions_say()
    {
        var all = Enumerable.Range(0, JobCount.Of).SelectMany(number => Agreements(SmallJob.Of(number, Book))).ToList();
        var decided = all.Where(one => one.IsDecided).ToList();
        var silent = decided.Where(one => !one.IsSaid).ToList();
        output.WriteLine($"{_completions} completions; {decided.Count} checks decided by them, {decided.Count - silent.Count} of these by the engine");
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
        var mayContradict = small.Blanks.Any(blank => blank.MayContradict);
        var completed = new Dictionary<(string Rule, string Part), HashSet<Result>>();
        foreach (var job in small.Completions())
        {
            _completions++;
            var states = Derive.From(job, Book.Vocabulary);
            foreach (var (check, result) in mayContradict && Contradiction.In(states, Limits) ? [] : Judged(small, job, states))
            {
                (completed.TryGetValue(check, out var results) ? results : completed[check] = []).Add(result);
            }
        }

        return Judged(small, small.Job, Derive.From(small.Job, Book.Vocabulary))
            .Where(one => completed.ContainsKey(one.Key))
            .Select(one => new Agreement(name, one.Key.Rule, one.Key.Part, one.Value, completed[one.Key]));
    }

    /// <summary>The checks that read something that was not known.</summary>
    private static Dictionary<(string Rule, string Part), Result> Judged(SmallJob small, Job job, IReadOnlyList<PartState> states)
    {
        var conclusions = Plain.Conclude(states);
        return All.SelectMany(reads => states.Where(state => state.Part.Kind == reads.Rule.Part && small.Blanks.Any(blank => blank.IsReadBy(reads, state.Part)))
                .Select(state => (reads.Rule, state.Part, Judgement: Plain.Of(reads.Rule, state, states, conclusions))))
            .ToDictionary(one => (one.Rule.Id, one.Part.Id), one => ResultOf(job, one.Judgement));
    }

    private static Result ResultOf(Job job, Judgement judgement) => judgement.Now switch
    {
        Outcome.Ok => Result.Ok,
        Outcome.NotHere => Result.NotHere,
        Outcome.Correction => Result.Correction,
        _ => Owed.Of(job, Book.Vocabulary, judgement.Hangs),
    };
}
