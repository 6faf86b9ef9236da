using System.Text.RegularExpressions;

namespace WetCheck.Intake;

/// <summary>One line of a file, taken apart without YAML: how far in, name, answer, and what breaks its shape by itself.</summary>
internal sealed partial class LineShape
{
    private LineShape(string line)
    {
        Line = line;
        Content = line.TrimStart(' ', '\t');
        Lead = line[..(line.Length - Content.Length)];
        var item = Content.StartsWith("- ", StringComparison.Ordinal) || Content == "-";
        IsSilent = Content.Length == 0 || Content[0] == '#' || Content is "---" or "..." || item;
        if (!IsSilent && KeyLine().Match(Content) is { Success: true } found)
        {
            Key = found.Groups["key"].Value.TrimEnd();
            ValueOffset = Lead.Length + found.Groups["value"].Index;
            Value = WithoutComment(found.Groups["value"].Value);
        }
    }

    public string Line { get; }

    public string Lead { get; }

    public string Content { get; }

    /// <summary>Nothing to judge: blank, a comment, an item of a list, a border of the document.</summary>
    public bool IsSilent { get; }

    public string? Key { get; }

    public string Value { get; } = "";

    /// <summary>Where the answer starts, counted from 0.</summary>
    public int ValueOffset { get; }

    public bool OpensBlock => BlockText().IsMatch(Value);

    public int Indent => Lead.Length;

    public static LineShape Of(string line) => new(line);

    /// <summary>What breaks this line by itself: column from 1, message, the line as it could be read on.</summary>
    public (int Column, Message Message, string Mended)? Slip()
    {
        if (IsSilent)
        {
            return null;
        }

        if (Key is null)
        {
            return NoSpace().Match(Content) is { Success: true } glued
                ? (Lead.Length + glued.Groups["value"].Index + 1,
                    Messages.NoSpaceAfterColon(glued.Groups["key"].Value, glued.Groups["value"].Value),
                    $"{Lead}{glued.Groups["key"].Value}: \"\"")
                : (Lead.Length + 1, Messages.NoColon(Content), "");
        }

        return ValueSlip() is { } message ? (ValueOffset + 1, message, Blank()) : null;
    }

    /// <summary>The same line without its answer.</summary>
    public string Blank() => $"{Lead}{Key}:";

    private Message? ValueSlip() => Value switch
    {
        "" => null,
        ['"' or '\'', ..] => QuoteSlip(),
        ['&' or '*', ..] => Messages.Anchor(),
        ['!', ..] => Messages.Tag(),
        ['%' or '@' or '`', ..] or ['-', ' ', ..] => Messages.FirstCharacter(Value[..1]),
        ['{' or '[', ..] => null,
        _ when SecondColonIn().IsMatch(Value) => Messages.SecondColon(Key!, Value),
        _ => null,
    };

    private Message? QuoteSlip()
    {
        var quote = Value[0];
        var end = Value.IndexOf(quote, 1);
        return end < 0 ? Messages.OpenQuote(quote, Value[1..].Trim())
            : end < Value.Length - 1 && Value[end + 1] != quote ? Messages.TextAfterQuote(Value)
            : null;
    }

    private static string WithoutComment(string value)
    {
        var hash = value.StartsWith('#') ? 0 : value.IndexOf(" #", StringComparison.Ordinal);
        return (hash < 0 ? value : value[..hash]).TrimEnd();
    }

    [GeneratedRegex(@"^(?<key>(""[^""]*""\s*|'[^']*'\s*|[^\s'""#{\[][^:]*)):(\s+(?<value>.*)|(?<value>))$", RegexOptions.ExplicitCapture)]
    private static partial Regex KeyLine();

    [GeneratedRegex(@"^(?<key>\p{L}[^:]*?):(?<value>[^\s:].*)$", RegexOptions.ExplicitCapture)]
    private static partial Regex NoSpace();

    [GeneratedRegex(@"^[|>][+-]?\d?$")]
    private static partial Regex BlockText();

    [GeneratedRegex(@":\s|:$")]
    private static partial Regex SecondColonIn();
}
