using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>What is missing, with the line it stands on and an answer in the units of the job.</summary>
internal static class MissingLine
{
    public const string Size = "shower.size";
    public const string Outline = "shower.outline";
    public const string DrainAt = "shower.drain at";
    public const string SecondDrainAt = "shower.second drain at";
    public const string Grate = "drain.grate";
    public const string GrateShape = "drain.grate shape";
    public const string ChannelLength = "drain.channel length";
    public const string ChannelRuns = "drain.channel runs";
    public const string Code = "plumbing code";
    public const string Rim = "floor.rim";
    public const string DrainTop = "drain.top";
    public const string Curb = "curb.height";
    public const string Cap = "curb.cap adds";
    public const string WallAdds = "walls.adds";
    public const string Tile = "tile.floor tile";
    public const string TileLong = "tile.floor tile long";
    public const string Joint = "tile.floor joint";
    public const string GridFrom = "tile.grid from";
    public const string Grid = "tile.grid";
    public const string RoughWidth = "curb.rough width";
    public const string Outside = "liner.outside";
    public const string RoomFloor = "shower.room floor";
    public const string Method = "method";
    public const string Bed = "bed.thickness";
    public const string PreSlope = "pre-slope.at drain";
    public const string Judged = "floor.judged";
    public const string TileAdds = "tile.floor adds";
    public const string Levels = "floor.levels";

    public static PanMissing Of(string key, string line, bool metric) => new(key, line, (line, metric) switch
    {
        (Size, false) => "60 x 36 finished",
        (Size, true) => "1500 x 900 finished",
        (Outline, false) => "60 x 60 less 24 x 24 at right-back",
        (Outline, true) => "1500 x 1500 less 600 x 600 at right-back",
        (DrainAt, false) => "30, 18",
        (DrainAt, true) => "750, 450",
        (SecondDrainAt, false) => "45, 15",
        (SecondDrainAt, true) => "1125, 375",
        (Grate, false) => "4-1/4",
        (Grate, true) => "110",
        (GrateShape, _) => "square",
        (ChannelLength, false) => "60",
        (ChannelLength, true) => "900",
        (ChannelRuns, _) => "side to side",
        (Rim, false) => "plan 3/4",
        (Rim, true) => "plan 19",
        (DrainTop, false) => "plan 1-3/4",
        (DrainTop, true) => "plan 45",
        (Curb, false) => "4-1/2 above liner at drain",
        (Curb, true) => "115 above liner at drain",
        (Cap, false) => "plan 1",
        (Cap, true) => "plan 25",
        (WallAdds, false) => "plan 7/8",
        (WallAdds, true) => "plan 22",
        (Tile or TileLong, false) => "2",
        (Tile or TileLong, true) => "50",
        (Joint, false) => "1/8",
        (Joint, true) => "3",
        (GridFrom, false) => "30, 18",
        (GridFrom, true) => "750, 450",
        (Grid, _) => "square to the walls",
        (RoughWidth, false) => "4-1/2",
        (RoughWidth, true) => "115",
        (Outside, false) => "plan 3",
        (Outside, true) => "plan 75",
        (RoomFloor, false) => "plan 1",
        (RoomFloor, true) => "plan 25",
        (Method, _) => "liner under mortar",
        (Judged, _) => "along any path",
        (Bed, false) => "plan 1-1/2",
        (Bed, true) => "plan 38",
        (PreSlope, false) => "plan 1",
        (PreSlope, true) => "plan 25",
        (TileAdds, false) => "plan 1/2",
        (TileAdds, true) => "plan 12",
        (Levels, false) => "0,0 3/4  60,0 3/4  30,18 0",
        (Levels, true) => "0,0 19  1500,0 19  750,450 0",
        (_, false) => "IRC 2021",
        _ => "NCC 2022",
    });
}
