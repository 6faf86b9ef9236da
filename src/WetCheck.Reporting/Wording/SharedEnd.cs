namespace WetCheck.Reporting;

/// <summary>Says once what several findings have in common at their end.</summary>
internal static class SharedEnd
{
    /// <summary>"2-1/8" below the rough curb", "1-3/4" below the rough curb" → "2-1/8" and 1-3/4" below the rough curb".</summary>
    public static string List(IReadOnlyList<string> findings, Phrases phrases)
    {
        var all = findings.Distinct().ToList();
        if (all.Count < 2)
        {
            return string.Concat(all);
        }

        var end = all[0][AfterFigure(all[0])..];
        return end.Length > 0 && all.All(finding => finding[AfterFigure(finding)..] == end)
            ? phrases.List([.. all.Select(finding => finding[..^end.Length])]) + end
            : phrases.List(all);
    }

    /// <summary>A blank after a digit is inside a figure: <c>3'-6 1/2" above</c>, <c>50 mm above</c>.</summary>
    private static int AfterFigure(string finding)
    {
        for (var i = 1; i < finding.Length; i++)
        {
            if (finding[i] == ' ' && !char.IsAsciiDigit(finding[i - 1]))
            {
                return i;
            }
        }

        return finding.Length;
    }
}
