using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Cli.Help;

/// <summary>
/// What is said of a word or a line that is longer than anything typed by hand. It is shown by its beginning only.
/// </summary>
internal static class TooLong
{
    private const int Shown = 40;

    public static bool Is(string typed) => typed.Length > Limits.TypedCharacters;

    public static string Say(string typed) =>
        $"\"{VisibleText.Line(typed[..Shown])}...\" is longer than {Limits.TypedCharacters.ToString("N0", CultureInfo.InvariantCulture)} characters. Was it meant to be typed here?";
}
