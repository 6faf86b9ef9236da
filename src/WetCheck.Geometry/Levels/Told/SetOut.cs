using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>All ways in which a floor may have been set out to its drain, as far as a job tells.</summary>
internal static class SetOut
{
    /// <summary>Half of the widest grate that is likely where nobody has told it.</summary>
    private const double Widest = 3;

    /// <summary>A reading this near to the middle of a drain is a reading of the drain.</summary>
    private const double Near = 1 / 16d;

    /// <param name="ways">As <see cref="DrainTold.Ways"/> gives them.</param>
    /// <returns>Empty: a channel of which not enough is known. Of a drain without a known grate: as a point, and to any
    /// likely grate.</returns>
    public static IReadOnlyList<Grate> Of(IReadOnlyList<(DrainTaken Taken, Grate Grate)> ways) =>
        ways is [(DrainTaken.Point, _)] ? [Grate.Point, Grate.Square(Widest), Grate.Round(Widest)] : [.. ways.Select(way => way.Grate)];

    public static bool IsAtDrain(IReadOnlyList<Grate> grates, PlanPoint drain, PlanPoint at) =>
        grates.Any(grate => Holds(grate, at - drain));

    private static bool Holds(Grate grate, PlanPoint at) => grate.Corners.Count < 3 ? at.Length <= Math.Max(grate.Radius, Near)
        : Enumerable.Range(0, grate.Corners.Count).All(corner =>
            (grate.Corners[(corner + 1) % grate.Corners.Count] - grate.Corners[corner]).Unit.Cross(at - grate.Corners[corner]) > -Near);
}
