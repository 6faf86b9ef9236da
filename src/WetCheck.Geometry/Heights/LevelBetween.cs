using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>How far one datum stands above another, by all ways together. Plans count.</summary>
internal static class LevelBetween
{
    /// <returns>Null where the job has no such level.</returns>
    public static HeightTold? Of(Levels levels, string from, string to)
    {
        if (!IsHere(levels, from) || !IsHere(levels, to))
        {
            return null;
        }

        var ways = levels.Between(from, to).ToList();
        var (paper, isApart) = Together([.. ways.Select(way => way.Given(onPaper: true))]);
        return new HeightTold(paper, !isApart && Together([.. ways.Select(way => way.Given(onPaper: false))]).Is != paper, isApart);
    }

    public static bool IsHere(Levels levels, string datum) => levels.Owners.TryGetValue(datum, out var owner) && owner.Exists != Tri.No;

    /// <summary>All bounds hold at once. Where two ways differ by less than their tools can tell, the shorter one counts as read.</summary>
    private static (Spread Is, bool IsApart) Together(IReadOnlyList<Spread> ways)
    {
        var (read, band) = (Interval.Everything, Interval.Everything);
        foreach (var way in ways)
        {
            band = band.Intersect(way.Band);
            read = read.Intersect(way.AsRead) is { IsEmpty: false } both ? both : read;
        }

        return band.IsEmpty ? (Spread.Everything, true) : (new Spread(read, band), false);
    }
}
