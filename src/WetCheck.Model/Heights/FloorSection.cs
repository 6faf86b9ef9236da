namespace WetCheck.Model;

/// <summary>
/// What can be drawn of a floor cut from the back wall through the drain and the curb. Inches above <see cref="Zero"/>;
/// null: not told as one number.
/// </summary>
/// <param name="Zero">The liner at the drain; without a liner the top of the drain.</param>
/// <param name="HasLiner">Else a bonded membrane lies on the bed or the tray.</param>
/// <param name="Depth">From the entry to the back wall; null: no section can be drawn.</param>
/// <param name="Back">Of the liner, or of the finished floor, at the foot of the back wall.</param>
/// <param name="Entry">The same at the entry.</param>
/// <param name="Bed">Thickness over a liner.</param>
/// <param name="Adds">What mortar and tile add on the bed.</param>
/// <param name="Board">End of the board at the back wall, above the bed; below zero in it.</param>
/// <param name="Sides">Each wall that a liner goes up.</param>
/// <param name="Nails">Through the liner, whose height is told.</param>
public sealed record FloorSection(
    string Zero,
    bool HasLiner,
    double? Depth,
    double? DrainFromEntry,
    double? Back,
    double? Entry,
    double? Substrate,
    double? DrainTop,
    double? Bed,
    double? Adds,
    double? Board,
    double? RoughCurb,
    double? FinishedCurb,
    double? CurbWidth,
    double? RoomFloor,
    IReadOnlyList<SectionSide> Sides,
    IReadOnlyList<SectionNail> Nails);

/// <param name="Length">Of the wall; null: not known.</param>
/// <param name="Top">Of the liner on it; null: not told.</param>
public sealed record SectionSide(string Name, double? Length, double? Top);

/// <param name="Place">A wall, or a face of the curb.</param>
public sealed record SectionNail(string Place, double Height);
