using System.Globalization;
using System.Text.RegularExpressions;

namespace WetCheck.Reporting;

/// <summary>Writes an example given in inches in millimetres as round as one would measure: <c>60 x 36</c> as <c>1525 x 915</c>.</summary>
internal static partial class MetricFigures
{
    private const decimal InInch = 25.4m;

    /// <summary>Below this every millimetre counts; above it an example goes by fives.</summary>
    private const decimal Small = 20;

    /// <param name="example">One that names its own unit stays as it is.</param>
    public static string Of(string example) =>
        WithUnit().IsMatch(example) ? example
        : Figure().Replace(example, figure => InMillimetres(figure).ToString(CultureInfo.InvariantCulture));

    private static int InMillimetres(Match figure)
    {
        var whole = Number(figure.Groups["whole"]);
        var part = figure.Groups["over"].Success ? Number(figure.Groups["over"]) / Number(figure.Groups["under"]) : 0;
        var millimetres = (whole + part) * InInch;
        return (int)(millimetres < Small ? decimal.Round(millimetres) : decimal.Round(millimetres / 5) * 5);
    }

    private static decimal Number(System.Text.RegularExpressions.Group digits) =>
        digits.Success ? decimal.Parse(digits.Value, NumberStyles.None, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex("(?<whole>[0-9]+)-(?<over>[0-9]+)/(?<under>[0-9]+)|(?<over>[0-9]+)/(?<under>[0-9]+)|(?<whole>[0-9]+)")]
    private static partial Regex Figure();

    [GeneratedRegex("[0-9] *(mm|cm|m|mil|in|ft|%|per|:)(?![a-z])|['\"]")]
    private static partial Regex WithUnit();
}
