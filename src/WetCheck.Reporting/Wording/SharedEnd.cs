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

        var ends = all.Select(finding => finding.IndexOf(' ', StringComparison.Ordinal) is var space and >= 0 ? finding[space..] : "").ToList();
        return ends[0].Length > 0 && ends.All(end => end == ends[0])
            ? phrases.List([.. all.Select(finding => finding[..^ends[0].Length])]) + ends[0]
            : phrases.List(all);
    }
}
