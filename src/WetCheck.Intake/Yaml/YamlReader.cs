using WetCheck.Model;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace WetCheck.Intake;

/// <summary>
/// Reads one YAML document into located nodes. The tree of the library is not used: it accepts what we refuse, and deep nesting ends
/// the process. Its own slips (exceptions without a place) become located messages here.
/// </summary>
internal sealed class YamlReader
{
    private readonly SourceText _source;
    private readonly ProblemList _problems;
    private readonly Parser _parser;
    private Mark _last = Mark.Empty;
    private int _nodes;

    private YamlReader(SourceText source, string text, ProblemList problems)
    {
        _source = source;
        _problems = problems;
        _parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
    }

    /// <summary>The document; null for an empty one.</summary>
    /// <param name="text">The source's text, its characters made plain.</param>
    /// <exception cref="ShapeFault">It can't be read to its end.</exception>
    public static Node? Read(SourceText source, string text, ProblemList problems)
    {
        var reader = new YamlReader(source, text, problems);
        try
        {
            return reader.Document();
        }
        catch (YamlException slip)
        {
            throw new ShapeFault(reader.At(slip.Start), Messages.BrokenShape());
        }
        catch (Exception slip) when (slip is InvalidOperationException or ArgumentException)
        {
            throw new ShapeFault(reader.At(reader._last), Messages.LeftOpen());
        }
    }

    private Node? Document()
    {
        Next<StreamStart>();
        if (Peek() is StreamEnd)
        {
            return null;
        }

        Next<DocumentStart>();
        var root = ReadNode(0);
        Next<DocumentEnd>();
        if (Peek() is DocumentStart second)
        {
            throw new ShapeFault(At(second.Start), Messages.SecondDocument());
        }

        return root is ScalarNode { IsBlank: true } ? null : root;
    }

    private Node ReadNode(int depth)
    {
        var start = Peek();
        var at = At(start.Start);
        Guard(start, at, depth);
        switch (start)
        {
            case Scalar scalar:
                Next<Scalar>();
                return Text(scalar, at);
            case SequenceStart:
                Next<SequenceStart>();
                var items = new List<Node>();
                while (Peek() is not SequenceEnd)
                {
                    items.Add(ReadNode(depth + 1));
                }

                Next<SequenceEnd>();
                return new ListNode(items, at);
            case MappingStart:
                Next<MappingStart>();
                var entries = ReadEntries(depth);
                var end = At(Peek().Start);
                Next<MappingEnd>();
                return new MapNode(entries, end, at);
            default:
                throw new ShapeFault(at, Messages.BrokenShape());
        }
    }

    private List<NamedNode> ReadEntries(int depth)
    {
        var entries = new List<NamedNode>();
        var seen = new Dictionary<string, At>(StringComparer.Ordinal);
        while (Peek() is not MappingEnd)
        {
            var key = ReadNode(depth + 1);
            var value = ReadNode(depth + 1);
            if (key is not ScalarNode name)
            {
                _problems.Add(key.At, Messages.KeyIsNoName());
            }
            else if (!seen.TryAdd(name.Text, name.At))
            {
                _problems.Add(name.At, Messages.Twice(name.Text, seen[name.Text].Line));
                entries.RemoveAll(entry => entry.Key.Text == name.Text);
            }
            else
            {
                entries.Add(new NamedNode(name, value));
            }
        }

        return entries;
    }

    private static ScalarNode Text(Scalar scalar, At at)
    {
        // A quoted text may spell out with escapes what the file itself must not hold. Only a block has lines of its own.
        var typed = Characters.AsTyped(scalar.Value);
        var text = scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded ? VisibleText.Of(typed) : VisibleText.Line(typed);
        var quoted = scalar.Style != ScalarStyle.Plain;
        var length = scalar.End.Column - scalar.Start.Column;
        var straight = scalar.End.Line == scalar.Start.Line && length == text.Length + (quoted ? 2 : 0)
            && scalar.Style is ScalarStyle.Plain or ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted;
        return new ScalarNode(text, quoted, (int)scalar.End.Line, straight, at);
    }

    private void Guard(ParsingEvent start, At at, int depth)
    {
        if (++_nodes > Limits.FileNodes)
        {
            throw new ShapeFault(at, Messages.TooMuch());
        }

        if (depth > Limits.FileDepth)
        {
            throw new ShapeFault(at, Messages.TooDeep());
        }

        if (start is AnchorAlias or NodeEvent { Anchor.IsEmpty: false })
        {
            throw new ShapeFault(at, Messages.Anchor());
        }

        if (start is NodeEvent { Tag: { IsEmpty: false, IsNonSpecific: false } })
        {
            throw new ShapeFault(at, Messages.Tag());
        }
    }

    private ParsingEvent Peek()
    {
        if (_parser.Current is null)
        {
            _parser.MoveNext();
        }

        return _parser.Current ?? throw new ShapeFault(At(_last), Messages.BrokenShape());
    }

    private void Next<T>()
        where T : ParsingEvent
    {
        var found = Peek();
        if (found is not T)
        {
            throw new ShapeFault(At(found.Start), Messages.BrokenShape());
        }

        _last = found.Start;
        _parser.MoveNext();
    }

    private At At(Mark mark)
    {
        var line = (int)Math.Max(1, mark.Line);
        if (line > _source.Lines.Count)
        {
            line = _source.Lines.Count;
            return _source.Place(line, _source.Line(line).Length + 1);
        }

        return _source.Place(line, (int)Math.Max(1, mark.Column));
    }
}
