using WetCheck.Model;
using static WetCheck.Reporting.JsonFigures;

namespace WetCheck.Reporting;

/// <summary>The level readings of a floor in JSON. Inches; falls in inches per foot.</summary>
internal static class LevelsJson
{
    public static LevelsShape Shape(LevelReport levels, PanSays says) => new()
    {
        FirstOutAt = Known(levels.FirstOut?.At),
        FirstOut = Known(levels.FirstOut?.Height),
        Readings = levels.Readings,
        HalfMark = Known(levels.Half),
        Spacing = Known(levels.Spacing),
        Hides = Known(2 * levels.Spacing),
        Planes = [.. levels.Planes.Select(plane => Plane(plane, says))],
        LowSpots = [.. levels.Ponds.Select(LowSpot)],
        Flats = [.. levels.Flats.Select(flat => new FlatShape { At = Place(flat.At), Most = Round(flat.Most * 12) })],
        Bumps = [.. levels.Bumps.Select(bump => new BumpShape { At = Place(bump.At), Shave = Round(bump.Off), Readings = bump.Readings })],
        ReadAgain = [.. levels.Again.Select(again => new ReadAgainShape { At = Place(again.At), Why = again.Key })],
        Contours = [.. levels.Contours.Select(line => new ContourShape { Height = Round(line.Height), Line = Ring(line.Line) })],
        Missing = PanJson.Missing(levels.Missing, says),
    };

    private static LevelPlaneShape Plane(LevelPlane plane, PanSays says) => new()
    {
        Kind = plane.Corner is null ? "plane" : "fold",
        Place = plane.Place.Length > 0 || plane.Corner is null ? plane.Place : says.Place(plane.Corner),
        Readings = plane.Readings,
        Estimate = Known(plane.Estimate * 12),
        Least = Known(plane.Least * 12),
        Most = Known(plane.Most * 12),
        Uneven = Round(plane.Uneven),
        Held = [.. plane.Held.Select(Held)],
    };

    private static LevelHeldShape Held(LevelHeld held) => new()
    {
        Measure = LimitsJson.Measure(held.Limits),
        Least = LimitsJson.PerFoot(held.Limits.Least),
        Most = LimitsJson.PerFoot(held.Limits.Most),
        Held = LimitsJson.Answers(held.Limits),
        Disputed = held.Limits.Disputed,
        Flat = Word(held.Flat),
        Steep = held.Steep is { } steep ? Word(steep) : null,
    };

    private static LowSpotShape LowSpot(LevelPond pond) => new()
    {
        At = Place(pond.At),
        Depth = Round(pond.Depth),
        Least = Round(pond.Least),
        Most = Round(pond.Most),
        Area = Round(pond.Area),
        Volume = Round(pond.Volume),
    };

    private static string Word(LevelVerdict verdict) => verdict switch
    {
        LevelVerdict.Ok => "ok",
        LevelVerdict.AtTheLimit => "at-the-limit",
        LevelVerdict.ReadAgain => "read-again",
        _ => "correction",
    };
}
