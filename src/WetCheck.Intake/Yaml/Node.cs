using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A piece of a YAML file with its place. Texts are raw: <c>yes</c>, <c>1/4</c> and <c>2026-11-25</c> are plain words.</summary>
internal abstract record Node(At At);

/// <summary>One text.</summary>
/// <param name="Quoted">It stood between quotes, or in a block of its own.</param>
/// <param name="EndLine">The line on which it ends.</param>
/// <param name="Straight">Each of its characters stands in the file as it is, in one line, so that offsets are columns.</param>
internal sealed record ScalarNode(string Text, bool Quoted, int EndLine, bool Straight, At At) : Node(At)
{
    public bool IsBlank => !Quoted && Text.Length == 0;

    /// <summary>Where a character of the text stands; the start of the text where that can't be told.</summary>
    public At Within(int offset) => Straight ? At with { Column = At.Column + (Quoted ? 1 : 0) + offset } : At;
}

internal sealed record ListNode(IReadOnlyList<Node> Items, At At) : Node(At);

/// <summary>Names with their values, in file order, none twice.</summary>
/// <param name="EndAt">Of names between braces: the closing one.</param>
internal sealed record MapNode(IReadOnlyList<NamedNode> Entries, At EndAt, At At) : Node(At)
{
    public Node? Find(string name) => Entries.FirstOrDefault(entry => entry.Key.Text == name)?.Value;
}

internal sealed record NamedNode(ScalarNode Key, Node Value);
