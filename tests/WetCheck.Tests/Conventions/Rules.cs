namespace WetCheck.Tests.Conventions;

/// <summary>The files of the rule book, by sort.</summary>
internal static class Rules
{
    private static readonly string[] NotRules =
        ["book", "vocabulary", "methods", "sources", "materials", "words", "lists", "causes", "opening"];

    /// <summary>One rule each; their cases stand beside them.</summary>
    public static IReadOnlyList<string> Files { get; } =
    [
        .. Repository.In("rules/", ".yaml").Where(file =>
            !NotRules.Contains(file.Split('/')[1].Replace(".yaml", "", StringComparison.Ordinal))
                && !file.EndsWith(".cases.yaml", StringComparison.Ordinal)),
    ];

    public static string CasesOf(string file) => file[..^".yaml".Length] + ".cases.yaml";
}
