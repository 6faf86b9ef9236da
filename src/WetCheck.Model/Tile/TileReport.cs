namespace WetCheck.Model;

/// <summary>How rigid tiles fit the folds of a floor with a level rim. Inches.</summary>
/// <param name="Rim">Over the drain, for which it is worked out; null: none is settled.</param>
/// <param name="Folds">Empty: one plane, or not known.</param>
/// <param name="Allowed">The step between neighbours that the book lets pass, the tile's own warp not counted; null:
/// the book has none.</param>
/// <param name="LargestUncut">The largest square tile, square to the walls, that keeps to it wherever its grid lies;
/// null: not known, or any does.</param>
/// <param name="Sizes">Usual square tiles, square to the walls.</param>
/// <param name="Laid">The job's own grid; null: not told.</param>
public sealed record TileReport(
    double? Rim,
    IReadOnlyList<TileFold> Folds,
    double? Allowed,
    IReadOnlyList<string> Rows,
    double? LargestUncut,
    IReadOnlyList<TileSize> Sizes,
    TileLaid? Laid,
    IReadOnlyList<PanMissing> Missing);

/// <param name="Corner">Where it starts, as in <see cref="PanFold"/>.</param>
/// <param name="Angle">Against the entry wall, degrees from 0 to 90.</param>
/// <param name="Half">Half the difference of the slopes on both sides, rise over run.</param>
public sealed record TileFold(string Corner, Spot At, double Angle, double Half);

/// <param name="Worst">Step, wherever the grid lies.</param>
/// <param name="Allowed">Whether that passes; unknown: the book has no figure.</param>
public sealed record TileSize(double Side, double Worst, Tri Allowed);

/// <summary>The tiles of the job in their grid.</summary>
/// <param name="Worst">Step of any two neighbours, and where.</param>
/// <param name="Gap">The widest between a tile and the bed under it.</param>
/// <param name="Count">Of tiles, cut at walls or whole.</param>
/// <param name="ToCut">Middles of those to cut along a fold.</param>
/// <param name="Best">The least worst step that moving the grid finds, and how far to move it along and across its
/// courses; null: not searched.</param>
public sealed record TileLaid(double Long, double Wide, double Joint, bool Diagonal, double Worst, Spot? At,
    double Gap, int Count, IReadOnlyList<Spot> ToCut, (double Step, double Along, double Across)? Best);
