namespace WetCheck.Model;

/// <summary>What is known of the differences between the datums of one job.</summary>
/// <param name="steps">Readings and bounds of nature.</param>
/// <param name="owners">The part each datum belongs to: no curb, no rough curb.</param>
public sealed class Levels(IReadOnlyList<LevelStep> steps, IReadOnlyDictionary<string, PartState> owners)
{
    private readonly Dictionary<(string, string), IReadOnlyList<LevelWay>> _ways = [];

    public IReadOnlyDictionary<string, PartState> Owners { get; } = owners;

    public IReadOnlyList<LevelStep> Steps { get; } = steps;

    /// <summary>Every way from one datum up to another that passes none twice. A datum to itself is one way of no steps.</summary>
    public IReadOnlyList<LevelWay> Between(string from, string to)
    {
        lock (_ways)
        {
            if (!_ways.TryGetValue((from, to), out var ways))
            {
                _ways[(from, to)] = ways = [.. Walk(from, to, [from], [])];
            }

            return ways;
        }
    }

    private IEnumerable<LevelWay> Walk(string at, string to, HashSet<string> seen, List<(LevelStep, bool)> path)
    {
        if (at == to)
        {
            yield return new LevelWay([.. path]);
            yield break;
        }

        foreach (var step in Steps)
        {
            var up = step.From == at;
            if (!up && step.To != at)
            {
                continue;
            }

            var next = up ? step.To : step.From;
            if (seen.Add(next))
            {
                path.Add((step, up));
                foreach (var way in Walk(next, to, seen, path))
                {
                    yield return way;
                }

                path.RemoveAt(path.Count - 1);
                seen.Remove(next);
            }
        }
    }
}

/// <summary>A reading that says how far one datum stands above another.</summary>
/// <param name="Fact">Null for a bound that nature sets.</param>
public sealed record LevelStep(string From, string To, Fact? Fact, Interval Bound)
{
    public Spread Given(bool onPaper) =>
        Fact?.Given(onPaper) is Known.Number { Spread: var spread } ? spread.Intersect(Bound) : Spread.Within(Bound);
}

/// <summary>Steps from one datum to another; a step taken downwards is false.</summary>
public sealed record LevelWay(IReadOnlyList<(LevelStep Step, bool Up)> Steps)
{
    public Spread Given(bool onPaper) =>
        Steps.Aggregate(Spread.Exactly(0), (sum, s) => s.Up ? sum + s.Step.Given(onPaper) : sum - s.Step.Given(onPaper));
}
