using WetCheck.Model;

namespace WetCheck;

/// <summary>Text without what can't be seen: nothing that moves a cursor, colours a screen or turns the way of writing.</summary>
public static class PlainText
{
    /// <summary>What stands for a sign that can't be seen.</summary>
    public const char Mark = VisibleText.Mark;

    public static string Of(string text) => VisibleText.Of(text);

    public static bool IsUnseen(char sign) => VisibleText.IsUnseen(sign);
}
