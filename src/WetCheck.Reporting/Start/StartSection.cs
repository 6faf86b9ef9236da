namespace WetCheck.Reporting;

/// <summary>Lines under one name of the job file.</summary>
/// <param name="Lines">None: the section is answered on its own line.</param>
public sealed record StartSection(string Name, StartLine Head, IReadOnlyList<StartLine> Lines)
{
    public int Length => 1 + Lines.Count;

    /// <summary>One section of several that bear one name; the first that has words gives its head.</summary>
    public static StartSection Joined(IEnumerable<StartSection> same)
    {
        var all = same.ToList();
        return new(
            all[0].Name,
            all.Select(section => section.Head).FirstOrDefault(head => head.Ask.Length > 0) ?? all[0].Head,
            [.. all.SelectMany(section => section.Lines).DistinctBy(line => line.Name)]);
    }
}
