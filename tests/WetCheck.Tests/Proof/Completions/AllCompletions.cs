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

    private static System.Diagnostics.Stopwatch T1 = new(), T2 = new(), T3 = new();
    [Fact]
    public void The_engine_says_what_all_completions_say()
    {
        var faults = new List<string>();
        var undecided = new Dictionary<string, int>();
        var (completions, decided, said) = (0, 0, 0);
        for (var number = 0; number < JobCount.Of; number++)
        {
            var small = SmallJob.Of(number, Book);
            var seen = new Dictionary<(string Rule, string Part), HashSet<Result>>();
            var before = Judged(small, small.Job, Derive.From(small.Job, Book.Vocabulary));
            foreach (var job in small.Completions())
            {
                completions++;
                T1.Start();
                var states = Derive.From(job, Book.Vocabulary);
                T1.Stop();
                T2.Start();
                var bad = (small.Blanks.Any(blank => blank.MayContradict) && Contradiction.In(states, Limits));
                T2.Stop();
                if (bad)
                {
                    continue;
                }

                T3.Start();
                var jd = Judged(small, job, states);
                T3.Stop();
                foreach (var (check, result) in jd)
                {
                    (seen.TryGetValue(check, out var results) ? results : seen[check] = []).Add(result);
                }
            }

            foreach (var (check, engine) in before.Where(one => seen.ContainsKey(one.Key)))
            {
                var results = seen[check];
                if (engine == Result.Ok ? results.Overlaps([Result.Correction, Result.ReadAgain]) : engine == Result.Correction && results.Contains(Result.Ok))
                {
                    faults.Add($"job {number}, {string.Join("; ", small.Blanks.Select(blank => blank.Of))}: {check} is {engine}, completions say {string.Join(", ", results)}");
                }

                if (results.SetEquals([Result.Correction]) || (results.Contains(Result.Ok) && results.IsSubsetOf([Result.Ok, Result.NotHere])))
                {
                    decided++;
                    if (engine is Result.Ok or Result.Correction)
                    {
                        said++;
                    }
                    else
                    {
                        undecided[check.Rule] = undecided.GetValueOrDefault(check.Rule) + 1;
                        if (undecided[check.Rule] <= 2)
                        {
                            output.WriteLine($"job {number}, {string.Join("; ", small.Blanks.Select(blank => blank.Of))}: {check} is {engine}, completions say {string.Join(", ", results)}");
                        }
                    }
                }
            }
        }

        output.WriteLine($"{T1.Elapsed} {T2.Elapsed} {T3.Elapsed}");
        output.WriteLine($"{completions} completions; {decided} checks decided by them, {said} of these by the engine");
        output.WriteLine(string.Join(", ", undecided.OrderByDescending(one => one.Value).Select(one => $"{one.Key} {one.Value}")));
        faults.Should().BeEmpty();
        ((double)said / decided).Should().BeGreaterThanOrEqualTo(0.95);
    }

    /// <summary>The checks that read something that was not known.</summary>
    private static Dictionary<(string Rule, string Part), Result> Judged(SmallJob small, Job job, IReadOnlyList<PartState> states)
    {
        var conclusions = Plain.Conclude(states);
        return All.SelectMany(reads => states.Where(state => state.Part.Kind == reads.Rule.Part && small.Blanks.Any(blank => blank.IsReadBy(reads, state.Part)))
                .Select(state => (reads.Rule, Judgement: Plain.Of(reads.Rule, state, states, conclusions), state.Part)))
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
