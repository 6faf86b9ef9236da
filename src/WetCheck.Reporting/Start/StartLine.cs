namespace WetCheck.Reporting;

/// <summary>A line to fill in, with what it asks.</summary>
/// <param name="Name">As in the job file; empty where the section is answered on its own line.</param>
/// <param name="Examples">Each can be put in its place as it stands; of a line that heads others, in theirs.</param>
/// <param name="Answer">What is known already.</param>
public sealed record StartLine(string Name, string Ask, IReadOnlyList<string> Examples, string Answer = "")
{
    public static readonly StartLine Nothing = new("", "", []);

    /// <summary>The name in the reader's own words, where those are others; of a section, what it speaks of.</summary>
    public string Said { get; init; } = "";

    /// <summary>The examples in the reader's own words, for paper.</summary>
    public IReadOnlyList<string> Words { get; init; } = Examples;

    /// <summary>The same, which may also be <c>none</c>.</summary>
    public StartLine OrNone() => this with { Examples = [.. Examples, "none"], Words = [.. Words, "none"] };

    /// <summary>"welded, open", "1/4 over 6, or none".</summary>
    public static string Shown(IReadOnlyList<string> examples, Phrases phrases) => examples is [.., _, "none"]
        ? phrases.Say(Phrase.Start.OrNone, ("examples", string.Join(", ", examples.SkipLast(1))))
        : string.Join(", ", examples);
}
