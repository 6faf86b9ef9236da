using System.Globalization;

namespace WetCheck.Reporting;

/// <summary>What a cut surface is made of, by the usual signs of engineering drawings; each is named by a label too.</summary>
internal enum Hatch { Mortar, Wood, Tile, Board, Floor }

internal static class Hatches
{
    public static string Key(this Hatch hatch) => hatch.ToString().ToLowerInvariant();

    /// <summary>A pattern of thin lines or dots, of a fixed size on the paper.</summary>
    public static string Svg(this Hatch hatch, string name)
    {
        var (size, marks) = hatch switch
        {
            Hatch.Mortar => (3.0, "<circle cx=\"0.6\" cy=\"0.8\" r=\"0.16\"/><circle cx=\"2\" cy=\"1.6\" r=\"0.2\"/>"
                + "<circle cx=\"1.1\" cy=\"2.5\" r=\"0.14\"/><circle cx=\"2.6\" cy=\"0.4\" r=\"0.14\"/>"),
            Hatch.Wood => (4.0, "<path class=\"thin\" d=\"M0 4L4 0\"/><path class=\"thin\" d=\"M0 0L4 4\"/>"),
            Hatch.Tile => (3.0, "<path class=\"thin\" d=\"M0 3L3 0M0.8 3L3 0.8\"/>"),
            Hatch.Board => (2.4, "<path class=\"thin\" d=\"M0.4 0.6h0.5M1.5 1.4h0.5M0.7 2.1h0.5\"/>"),
            _ => (3.0, "<path class=\"thin\" d=\"M0 0.6H3M0 1.8H3\"/>"),
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<pattern id=\"{name}-{hatch.Key()}\" width=\"{size}\" height=\"{size}\" patternUnits=\"userSpaceOnUse\">{marks}</pattern>");
    }
}
