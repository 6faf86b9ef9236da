using System.Globalization;

namespace WetCheck.Reporting;

/// <summary>The text of a drawing: scalable vector graphics as the open standard has them, one unit a millimetre, nothing loaded.</summary>
internal static class SvgText
{
    public static string Line(Mm from, Mm to, Pen pen, Dash dash) =>
        $"<path class=\"{Class(pen, dash)}\" d=\"M{At(from)}L{At(to)}\"/>\n";

    /// <summary>With a hatch its pattern is named when the whole is written.</summary>
    public static string Ring(IReadOnlyList<Mm> corners, Pen pen, Hatch? hatch, Dash dash) =>
        $"<path class=\"{Class(pen, dash)}\"{(hatch is { } filled ? $" style=\"fill:url(#{{name}}-{filled.Key()})\"" : "")} "
        + $"d=\"M{string.Join('L', corners.Select(At))}Z\"/>\n";

    public static string Circle(Mm middle, double radius, Pen pen, bool isFilled) =>
        $"<circle class=\"{(isFilled ? "dot" : pen.Key())}\" cx=\"{Number(middle.X)}\" cy=\"{Number(middle.Y)}\" "
        + $"r=\"{Number(radius)}\"/>\n";

    /// <summary>Its middle at a place. Letters stand on a line a third of their size below it.</summary>
    public static string Text(string text, Mm middle, bool isUpright, bool isBold, double size)
    {
        var at = isUpright
            ? $"transform=\"translate({Number(middle.X + (size * 0.36))} {Number(middle.Y)}) rotate(-90)\""
            : $"x=\"{Number(middle.X)}\" y=\"{Number(middle.Y + (size * 0.36))}\"";
        return $"<text {at} font-size=\"{Number(size)}\"{(isBold ? " font-weight=\"bold\"" : "")}>{Escape.Html(text)}</text>\n";
    }

    /// <summary>A text that begins at a place.</summary>
    public static string Begun(string text, Mm left, double size) =>
        $"<text class=\"begun\" x=\"{Number(left.X)}\" y=\"{Number(left.Y + (size * 0.36))}\" "
        + $"font-size=\"{Number(size)}\">{Escape.Html(text)}</text>\n";

    /// <summary>How lines and letters look. A page that drawings stand in has it once.</summary>
    public static string Style { get; } =
        ".drawing path,.drawing circle{fill:none;stroke:#000;stroke-linejoin:round}"
        + $".drawing .cut{{stroke-width:{Number(Pen.Cut.Width())}}}.drawing "
        + $".seen{{stroke-width:{Number(Pen.Seen.Width())}}}.drawing .thin{{stroke-width:{Number(Pen.Thin.Width())}}}"
        + ".drawing .short{stroke-dasharray:1.6 1.2}.drawing .middle{stroke-dasharray:6 1.2 1.2 1.2}.drawing "
        + ".dot,.drawing pattern circle{fill:#000;stroke:none}"
        + ".drawing text{font-family:Arial,Helvetica,sans-serif;fill:#000;stroke:none;text-anchor:middle}.drawing "
        + "text.begun{text-anchor:start}";

    /// <param name="name">Begins every name in it, so that two drawings may stand on one page.</param>
    /// <param name="isAlone">A file of its own; else it stands in a page.</param>
    /// <param name="lost">Labels that found no place.</param>
    public static string Whole(string name, string title, IReadOnlyList<string> told, Box sheet,
        IEnumerable<Hatch> hatches, string lines, string texts, bool isAlone, int lost)
    {
        var (width, height) = (Number(sheet.Right - sheet.Left), Number(sheet.Bottom - sheet.Top));
        var patterns = string.Concat(hatches.Order().Select(hatch => hatch.Svg(name)));
        return $"<svg class=\"drawing\"{(lost > 0 ? $" data-lost=\"{lost}\"" : "")}"
            + $"{(isAlone ? " xmlns=\"http://www.w3.org/2000/svg\"" : "")} "
            + $"role=\"img\" aria-labelledby=\"{name}-title {name}-told\" "
            + $"width=\"{width}mm\" height=\"{height}mm\" viewBox=\"{Number(sheet.Left)} {Number(sheet.Top)} {width} {height}\">\n"
            + $"<title id=\"{name}-title\">{Escape.Html(title)}</title>\n"
            + $"<desc id=\"{name}-told\">{Escape.Html(string.Join('\n', told))}</desc>\n"
            + (isAlone ? $"<style>{Style}</style>\n" : "")
            + (patterns.Length > 0 ? $"<defs>{patterns}</defs>\n" : "")
            + lines.Replace("{name}", name, StringComparison.Ordinal) + texts + "</svg>\n";
    }

    private static string Class(Pen pen, Dash dash) => dash switch
    {
        Dash.Short => pen.Key() + " short",
        Dash.Middle => pen.Key() + " middle",
        _ => pen.Key(),
    };

    private static string At(Mm at) => $"{Number(at.X)} {Number(at.Y)}";

    private static string Number(double number) => (Math.Round(number, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);
}
