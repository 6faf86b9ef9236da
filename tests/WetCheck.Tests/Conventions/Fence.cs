using System.Text.RegularExpressions;

namespace WetCheck.Tests.Conventions;

/// <summary>A piece of YAML in a document, and what it is: <c>```yaml job</c>.</summary>
/// <param name="Sort">job, rule, cases, sources or local; empty: it doesn't say.</param>
internal sealed partial record Fence(string File, int Line, string Sort, string Text)
{
    /// <summary>All of README.md and docs, in order.</summary>
    public static IReadOnlyList<Fence> All { get; } = [.. Repository.In("docs/", ".md").Prepend("README.md").SelectMany(In)];

    public override string ToString() => $"{File}:{Line}";

    private static IEnumerable<Fence> In(string file)
    {
        var text = Repository.Read(file);
        return Block().Matches(text).Select(block => new Fence(
            file,
            text[..block.Index].Count(c => c == '\n') + 1,
            block.Groups["sort"].Value.Trim(),
            block.Groups["text"].Value));
    }

    [GeneratedRegex(@"^```yaml(?<sort>[^\n]*)\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
