using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>One family and edition at a time, as finely as the rule tells editions apart.</summary>
internal static class CodeAxis
{
    public static Axis Of(Scene scene, string discipline)
    {
        var ranges =
            scene.Plan.Conditions.OfType<Condition.CodeIs>().Where(test => test.Discipline == discipline)
            .SelectMany(test => test.OneOf).ToList();
        var cells = scene.Surroundings!.Codes[discipline].Tried.SelectMany(tried => Cut(tried, ranges)).ToList();
        return cells.Count == 0 ? new Axis([], [world => world]) : new Axis(
            [new Hang(FactId.Code(discipline), null, Phase.Version, Near: false)],
            [.. cells.Select(cell => (Func<World, World>)(world => world.WithCode(discipline, cell)))]);
    }

    /// <summary>The editions of a range between the years at which the rule changes.</summary>
    private static IEnumerable<CodeRange> Cut(CodeRange tried, IReadOnlyList<CodeRange> ranges)
    {
        var years = ranges.Where(range => range.Family == tried.Family)
            .SelectMany(range => new[] { range.From, range.To + 1 })
            .OfType<int>()
            .Where(year => !(year <= tried.From) && !(year > tried.To))
            .Distinct()
            .Order();
        var from = tried.From;
        foreach (var year in years)
        {
            yield return tried with { From = from, To = year - 1 };
            from = year;
        }

        yield return tried with { From = from };
    }
}
