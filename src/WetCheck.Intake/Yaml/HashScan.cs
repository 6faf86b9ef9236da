namespace WetCheck.Intake;

/// <summary>Finds answers that lose their end to YAML: in <c>job: Unit #4</c> it takes <c>#4</c> for a comment, without a word.</summary>
internal static class HashScan
{
    public static void Run(SourceText source, ProblemList problems)
    {
        for (var number = 1; number <= source.Lines.Count; number++)
        {
            var shape = LineShape.Of(source.Line(number));
            if (shape.Content.StartsWith('#'))
            {
                continue;
            }

            if (Hash(shape.Line) is { } hash && hash + 1 < shape.Line.Length && !char.IsWhiteSpace(shape.Line[hash + 1])
                && shape.Line[hash + 1] != '#')
            {
                var whole = shape.Key is null ? shape.Content : shape.Line[shape.ValueOffset..].Trim();
                problems.Add(source.Place(number, hash + 1), Messages.HashStartsComment(shape.Line[hash..], whole));
            }

            if (shape.OpensBlock)
            {
                while (number < source.Lines.Count
                    && (source.Line(number + 1).Trim().Length == 0 || LineShape.Of(source.Line(number + 1))
                    .Indent > shape.Indent))
                {
                    number++;
                }
            }
        }
    }

    /// <summary>Where the first comment of a line starts: behind a space, outside a quoted text.</summary>
    private static int? Hash(string line)
    {
        var quote = '\0';
        for (var i = 0; i < line.Length; i++)
        {
            var opens = i == 0 || line[i - 1] is ' ' or '\t' or '{' or '[' or ',';
            if (quote != '\0')
            {
                quote = line[i] == quote ? '\0' : quote;
            }
            else if (line[i] is '"' or '\'' && opens)
            {
                quote = line.IndexOf(line[i], i + 1) < 0 ? '\0' : line[i];
            }
            else if (line[i] == '#' && i > 0 && line[i - 1] is ' ' or '\t')
            {
                return i;
            }
        }

        return null;
    }
}
