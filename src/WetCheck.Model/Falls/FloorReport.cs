namespace WetCheck.Model;

/// <summary>All sheets of one floor.</summary>
public sealed record FloorReport(PanReport Falls, HeightReport Heights, MarkReport Marks, MudReport Mud,
    LevelReport Levels, TileReport Tile, LinerReport Liner);
