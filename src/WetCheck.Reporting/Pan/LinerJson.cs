using WetCheck.Model;
using static WetCheck.Reporting.JsonFigures;

namespace WetCheck.Reporting;

/// <summary>The cut sheet of a liner in JSON. Inches.</summary>
internal static class LinerJson
{
    public static LinerShape Shape(LinerReport liner, PanSays says) => new()
    {
        Upturn = Known(liner.Upturn),
        Along = Known(liner.Cut?.Size.Along),
        Across = Known(liner.Cut?.Size.Across),
        Flaps = [.. (liner.Cut?.Flaps ?? []).Select(flap =>
            new FlapShape { Side = flap.Side, Length = Round(flap.Length), Beyond = Round(flap.Beyond) })],
        Corners = [.. (liner.Cut?.Corners ?? []).Select(corner => new LinerCornerShape
        {
            Corner = corner.Corner,
            At = Known(corner.At),
            Covers = Round(corner.Covers),
            Patch = corner.Covers == 0 || corner.AtCurb,
        })],
        Rolls = [.. (liner.Cut?.Rolls ?? []).Select(roll =>
            new RollShape { Width = Round(roll.Width), Length = Round(roll.Length), AlongEntry = roll.AlongEntry,
                Waste = Round(roll.Waste) })],
        Missing = PanJson.Missing(liner.Missing, says),
    };
}
