namespace WetCheck.Model;

/// <summary>The sheet that lines a floor, laid flat to be cut. Inches.</summary>
/// <param name="Upturn">At the walls, from the floor to the edge; null: not known.</param>
/// <param name="Cut">Null: something is missing.</param>
public sealed record LinerReport(double? Upturn, LinerCut? Cut, IReadOnlyList<PanMissing> Missing);

/// <param name="Floor">Its corners, between the studs where what goes on them is told; against the clock.</param>
/// <param name="IsToFinished">Nobody has told what goes on the studs: the floor is that between finished faces.</param>
/// <param name="Size">Of the least rectangle to cut from: along the entry, and square to it.</param>
/// <param name="Flaps">Past each side, clockwise from the entry.</param>
/// <param name="Rolls">Ways to cut it, the best first.</param>
/// <param name="NoRoll">Widths that no single piece can be cut from.</param>
public sealed record LinerCut(
    IReadOnlyList<Spot> Floor,
    bool IsToFinished,
    (double Along, double Across) Size,
    IReadOnlyList<LinerFlap> Flaps,
    IReadOnlyList<LinerFold> Corners,
    IReadOnlyList<LinerRoll> Rolls,
    IReadOnlyList<double> NoRoll);

/// <param name="Beyond">Past the wall's line: up it; at the entry up, over and down the curb.</param>
/// <param name="Folds">Where else it is folded, from the wall's line: at the curb's edges.</param>
/// <param name="Corners">Of the strip.</param>
public sealed record LinerFlap(string Side, double Length, double Beyond, IReadOnlyList<double> Folds, IReadOnlyList<Spot> Corners);

/// <summary>What is done at a corner.</summary>
/// <param name="Corner">A place of the vocabulary; empty where it has no name.</param>
/// <param name="Angle">Of the floor there, degrees.</param>
/// <param name="Covers">How far along a wall the pleat lies at its top; 0: a piece closes the corner.</param>
/// <param name="AtCurb">The sheet is cut above the curb, and a piece closes that.</param>
public sealed record LinerFold(string Corner, Spot At, double Angle, double Covers, bool AtCurb);

/// <param name="Width">Of the roll.</param>
/// <param name="Length">Off it.</param>
/// <param name="AlongEntry">The roll runs along the entry.</param>
/// <param name="Waste">Of what comes off, 0 to 1.</param>
public sealed record LinerRoll(double Width, double Length, bool AlongEntry, double Waste);
