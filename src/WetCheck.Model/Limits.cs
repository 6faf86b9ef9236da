namespace WetCheck.Model;

/// <summary>
/// How much is taken in. Far above what any job needs; past it a message says so. With these every answer comes in seconds, whatever is typed.
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

    /// <summary>Answers of one log.</summary>
    public const int LogAnswers = 2_000;

    /// <summary>One word of the command line, or one line typed at a question, characters.</summary>
    public const int TypedCharacters = 4_000;
}
