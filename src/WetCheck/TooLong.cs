using System.Globalization;
using WetCheck.Model;

namespace WetCheck;

/// <summary>What is said of a word or a line that is longer than anything typed by hand. It is shown by its beginning only.</summary>
public static class TooLong
{
    /// <summary>Of a line that is typed.</summary>
    public const int Characters = Limits.TypedCharacters;

    /// <summary>Of a file that is read.</summary>
    public const int FileBytes = Limits.FileBytes;

    private const int Shown = 40;

    public static bool Is(string typed) => typed.Length > Limits.TypedCharacters;

    public static string Say(string typed) =>
        $"\"{VisibleText.Line(typed[..Shown])}...\" is longer than "
        + $"{Limits.TypedCharacters.ToString("N0", CultureInfo.InvariantCulture)} characters. Was it meant to be typed here?";
}
