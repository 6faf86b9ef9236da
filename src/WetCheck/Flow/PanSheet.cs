using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Flow;

/// <summary>One sheet of a floor: what it prints, and how it ends.</summary>
/// <param name="Text">Of the floor, in a language, at a time.</param>
internal sealed record PanSheet(string Name, Func<FloorReport, Walk, string, string, string> Text, Func<FloorReport, RoomState> Code)
{
    /// <summary>The first is the one that is not asked for by name.</summary>
    public static IReadOnlyList<PanSheet> All { get; } =
    [
        new("falls", (floor, walk, language, now) => PanText.Of(floor.Falls, walk, language, now), floor => Of(floor.Falls)),
        new("heights", HeightsText.Of, floor => floor.Heights.Missing.Count > 0 ? RoomState.Unfinished : RoomState.NothingOwed),
        new("mud", MudText.Of, floor => floor.Mud.Missing.Count > 0 ? RoomState.Unfinished : RoomState.NothingOwed),
        new("marks", MarksText.Of, floor => Of(floor.Marks)),
        new("liner", LinerText.Of, floor => floor.Liner.Missing.Count > 0 ? RoomState.Unfinished : RoomState.NothingOwed),
        new("tile", TileText.Of,
            floor => floor.Tile.Laid is { } laid && floor.Tile.Allowed is { } allowed && laid.Worst > allowed
            ? RoomState.NotReady : floor.Tile.Missing.Count > 0 ? RoomState.Unfinished : RoomState.NothingOwed),
        new("levels", LevelsText.Of, floor => Of(floor.Levels)),
    ];

    /// <summary>To fix where no marks fit; unfinished where something is not known, or a reading of the limits is not kept.</summary>
    private static RoomState Of(MarkReport marks) =>
        marks.Why.Length > 0 || (marks.Plan is { } plan && plan.Held.All(held => !held.Kept)) ? RoomState.NotReady
        : marks.Missing.Count > 0 || marks.Plan is null || marks.Plan.Held.Any(held => !held.Kept) ? RoomState.Unfinished
        : RoomState.NothingOwed;

    public static PanSheet Named(string? name) => All.FirstOrDefault(sheet => sheet.Name == name) ?? All[0];

    /// <summary>
    /// To fix where a fall is proven past a limit that nobody disputes, or water stands for certain; unfinished where
    /// something is to be read.
    /// </summary>
    private static RoomState Of(LevelReport levels)
    {
        var held = levels.Planes.SelectMany(plane => plane.Held).Where(one => !one.Limits.Disputed)
            .SelectMany(one => new[] { one.Flat, one.Steep ?? LevelVerdict.Ok }).ToList();
        return held.Contains(LevelVerdict.Correction) || levels.Ponds.Any(pond => pond.Least > 1e-9) ? RoomState.NotReady
            : levels.Missing.Count > 0 || levels.Again.Count > 0 || levels.Bumps.Count > 0 || levels.Ponds.Count > 0
                || held.Contains(LevelVerdict.ReadAgain) ? RoomState.Unfinished
            : RoomState.NothingOwed;
    }

    /// <summary>To fix where nothing fits; unfinished where something is not known, or fits by one reading and not by another.</summary>
    private static RoomState Of(PanReport pan) =>
        pan.Cases.Count > 0 && pan.Cases.All(one => one.Feasible == Tri.No) ? RoomState.NotReady
        : pan.Missing.Count > 0 || pan.Cases.Count == 0
            || pan.Cases.Any(one => one.Feasible != Tri.Yes || one.Mark is null) ? RoomState.Unfinished
        : RoomState.NothingOwed;
}
