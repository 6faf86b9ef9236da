namespace WetCheck.Intake;

/// <summary>
/// Finds every broken line of a file that YAML gave up on, and mends a copy, so that the rest can be read for further problems. A YAML
/// reader stops at the first broken line and often blames the one after it.
/// </summary>
internal sealed class ShapeScan
{
    private static readonly HashSet<string> s_longForm = new(["read", "tool", "by", "date", "photo"], StringComparer.Ordinal);

    private readonly SourceText _source;
    private readonly ProblemList _problems;
    private readonly string[] _mended;
    private readonly List<Level> _levels = [];
    private (LineShape Shape, int Number)? _before;

    private ShapeScan(SourceText source, string text, ProblemList problems)
    {
        _source = source;
        _problems = problems;
        _mended = text.Split(["\r\n", "\n", "\r"], StringSplitOptions.None);
    }

    /// <summary>Lines that stand equally far in, with the name on the last of them.</summary>
    private sealed record Level(int Indent, string Key);

    /// <summary>The text mended line by line; what was mended is in <paramref name="problems"/>.</summary>
    public static string Mend(SourceText source, string text, ProblemList problems)
    {
        var scan = new ShapeScan(source, text, problems);
        scan.Walk();
        return string.Join('\n', scan._mended);
    }

    private void Walk()
    {
        for (var number = 1; number <= _mended.Length; number++)
        {
            var shape = LineShape.Of(_mended[number - 1]);
            if (shape.IsSilent || IsRunOn(shape))
            {
                continue;
            }

            shape = Aligned(shape, number);
            if (shape.Slip() is { } slip)
            {
                Report(number, slip.Column, slip.Message, slip.Mended);
                shape = LineShape.Of(slip.Mended);
                _levels[^1] = _levels[^1] with { Key = shape.Key ?? _levels[^1].Key };
            }

            if (shape.Key is not null)
            {
                _before = (shape, number);
                number = shape.OpensBlock ? LastDeeper(number, shape.Indent) : Closes(shape, number);
            }
        }
    }

    /// <summary>A text that goes on in the next line.</summary>
    private bool IsRunOn(LineShape shape) =>
        shape.Key is null && _before is { Shape: { Value.Length: > 0 } above } && shape.Indent > above.Indent
            && !shape.Content.Contains(':', StringComparison.Ordinal);

    private LineShape Aligned(LineShape shape, int number)
    {
        var tab = shape.Lead.IndexOf('\t', StringComparison.Ordinal);
        if (tab >= 0)
        {
            var mended = LineShape.Of(new string(' ', _levels.Count == 0 ? 0 : OpensLevel() ? 2 : _levels[^1].Indent) + shape.Content);
            Report(number, tab + 1, tab == 0 ? Messages.Tab() : Messages.TabAfterSpaces(), mended.Line);
            shape = mended;
        }

        var known = _levels.FindIndex(level => level.Indent == shape.Indent);
        if (known < 0 && (_levels.Count == 0 || (shape.Indent > _levels[^1].Indent && OpensLevel(shape))))
        {
            _levels.Add(new Level(shape.Indent, shape.Key ?? ""));
            return shape;
        }

        if (known < 0)
        {
            known = Nearest(shape.Indent);
            var level = _levels[known];
            var mended = LineShape.Of(new string(' ', level.Indent) + shape.Content);
            Report(number, shape.Indent + 1, Messages.OddIndent(shape.Indent, level.Indent, level.Key), mended.Line);
            shape = mended;
        }

        _levels.RemoveRange(known + 1, _levels.Count - known - 1);
        _levels[known] = new Level(shape.Indent, shape.Key ?? _levels[known].Key);
        return shape;
    }

    /// <summary>Whether a line further in may follow: it is below a section, or part of an answer's long form.</summary>
    private bool OpensLevel(LineShape? shape = null)
    {
        if (_before is not { } before)
        {
            return false;
        }

        if (before.Shape.Value.Length > 0)
        {
            if (before.Shape.Indent != _levels[0].Indent || shape?.Key is null)
            {
                return false;
            }

            var last = LastDeeper(before.Number, before.Shape.Indent);
            Report(before.Number, before.Shape.ValueOffset + 1,
                Messages.AnswerAboveQuestions(before.Shape.Key!, before.Shape.Value,
                LinesWithin(before.Number + 1, last)), before.Shape.Blank());
            return true;
        }

        return _levels.Count < 2 || shape?.Key is null || s_longForm.Contains(Names.Fold(shape.Key));
    }

    private int Nearest(int indent) =>
        Enumerable.Range(0, _levels.Count).OrderBy(i => Math.Abs(_levels[i].Indent - indent)).ThenByDescending(i => i).First();

    /// <summary>The last line that stands further in than a line.</summary>
    private int LastDeeper(int number, int indent)
    {
        while (number < _mended.Length && (string.IsNullOrWhiteSpace(_mended[number]) || LineShape.Of(_mended[number]).Indent > indent))
        {
            number++;
        }

        return number;
    }

    private List<int> LinesWithin(int from, int to) =>
        [.. Enumerable.Range(from, to - from + 1).Where(number => !LineShape.Of(_mended[number - 1]).IsSilent)];

    /// <summary>The line on which a brace or bracket closes; one that never does is named and left out.</summary>
    private int Closes(LineShape shape, int number)
    {
        if (shape.Value is not ['{' or '[', ..])
        {
            return number;
        }

        var open = 0;
        for (var at = number; at <= _mended.Length; at++)
        {
            var text = at == number ? shape.Value : _mended[at - 1];
            open += text.Count(c => c is '{' or '[') - text.Count(c => c is '}' or ']');
            if (open <= 0)
            {
                return at;
            }

            if (at > number && LineShape.Of(_mended[at - 1]) is { Key: not null } next && next.Indent <= shape.Indent)
            {
                break;
            }
        }

        Report(number, shape.ValueOffset + 1, Messages.OpenBracket(shape.Value[0]), shape.Blank());
        return number;
    }

    private void Report(int number, int column, Message message, string mended)
    {
        _problems.Add(_source.Place(number, column), message);
        _mended[number - 1] = mended;
    }
}
