namespace WetCheck.Reporting;

/// <summary>How wide a line of text gets, on the safe side for any plain face without serifs.</summary>
internal static class Lettering
{
    /// <summary>Of plain text; over 3.5 mm, the least that is read when copied.</summary>
    public const double Plain = 3.6;

    /// <summary>Of the numbers of findings.</summary>
    public const double Number = 4.4;

    public static double Width(string text, double size, bool isBold) => text.Sum(Of) * size * (isBold ? 1.1 : 1);

    /// <summary>In parts of the size; wide faces were measured.</summary>
    private static double Of(char letter) => letter switch
    {
        ' ' or '.' or ',' or ':' or ';' or '\'' or '|' or 'i' or 'l' or 'j' or 'I' => 0.34,
        '"' or '(' or ')' or '-' or '/' or 't' or 'f' or 'r' => 0.47,
        'm' or 'w' or 'M' or 'W' or '%' or '@' => 1,
        >= 'A' and <= 'Z' => 0.76,
        >= '0' and <= '9' => 0.64,
        < '\u0250' => 0.64,
        _ => 1.1,
    };
}
