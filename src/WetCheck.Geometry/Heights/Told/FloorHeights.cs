using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The heights of a job's floor: what stands where, what the rules ask of it, where water leaves.</summary>
public static class FloorHeights
{
    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them. Plans count.</param>
    /// <param name="falls">Of the same job; the rim is taken from it where nobody has read one.</param>
    public static HeightReport Of(Job job, RuleBook book, IReadOnlyList<PartState> known, PanReport falls)
    {
        var told = new Standing(known, falls);
        return new HeightReport(
            [.. told.Lines().Concat(EntryHeights.Of(told, known)).Concat(LedgeFalls.Of(book, known)).Concat(told.Sizes())],
            [.. AskedOnTape.Of(book, known, told)],
            [.. WaterLevels.Of(job, known, told)],
            [.. Missing(told, job.Metric == true)],
            FloorSections.Of(known, told));
    }

    private static IEnumerable<PanMissing> Missing(Standing told, bool metric)
    {
        if (told.Rim(null).Is.IsUnknown)
        {
            yield return MissingLine.Of("no-rim", MissingLine.Rim, metric);
        }

        if (told.IsToStuds && told.Number("wall", "adds") is null or { Is.IsUnknown: true })
        {
            yield return MissingLine.Of("no-wall-adds", MissingLine.WallAdds, metric);
        }

        foreach (var (from, to, key, line) in Asked)
        {
            if (told.Between(from, to) is { } height && !height.Is.AsRead.IsPoint)
            {
                yield return MissingLine.Of(height.IsApart ? "height-apart" : key, line, metric);
            }
        }
    }

    private static IEnumerable<(string From, string To, string Key, string Line)> Asked =>
    [
        ("liner at drain", "top of drain", "no-drain-top", MissingLine.DrainTop),
        ("liner at drain", "rough curb", "no-rough-curb", MissingLine.Curb),
        ("rough curb", "finished threshold", "no-cap", MissingLine.Cap),
        ("top of drain", "room floor", "no-room-floor", MissingLine.RoomFloor),
    ];
}
