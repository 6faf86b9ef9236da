namespace WetCheck.Model;

/// <summary>
/// How much is taken in. Far above what any job needs; past it a message says so. With these every answer comes in
/// seconds, whatever is typed.
/// <c>docs/limits.md</c> has them for people; a test holds the two together.
/// </summary>
public static class Limits
{
    /// <summary>Of any file that is read, bytes.</summary>
    public const int FileBytes = 4_000_000;

    /// <summary>Of a file of YAML, characters.</summary>
    public const int FileCharacters = 1_000_000;

    /// <summary>Names and answers of one file.</summary>
    public const int FileNodes = 100_000;

    /// <summary>Brackets within brackets.</summary>
    public const int FileDepth = 40;

    /// <summary>Members of a list on one line: nails, seams.</summary>
    public const int Members = 2_000;

    /// <summary>Layers of one wall.</summary>
    public const int Layers = 40;

    /// <summary>A side of a floor, or how far along one a place is; inches.</summary>
    public const int SideInches = 1_200;

    /// <summary>Corners of an outline.</summary>
    public const int Corners = 24;

    /// <summary>Places with a level, on the line or in the table.</summary>
    public const int Levels = 1_000;

    /// <summary>How far a level may be from the level line; inches.</summary>
    public const int LevelInches = 120;

    /// <summary>Lines of one height in a drawing. Past it they stand farther apart.</summary>
    public const int Contours = 40;

    /// <summary>Places with standing water that a drawing names, the deepest. The list has all.</summary>
    public const int NamedPonds = 40;

    /// <summary>Answers of one log.</summary>
    public const int LogAnswers = 2_000;

    /// <summary>One word of the command line, or one line typed at a question, characters.</summary>
    public const int TypedCharacters = 4_000;
}
