using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A file as located nodes. Where its shape is broken all the broken lines are named, and what can still be read is.</summary>
internal static class Document
{
    /// <summary>How many lines are given up, one after the other, to read on behind them.</summary>
    private const int MostGivenUp = 20;

    /// <summary>A file longer than any hand types gets fewer tries.</summary>
    private const int LongText = 100_000;

    /// <summary>Null for an empty file, and where nothing can be read.</summary>
    public static Node? Read(SourceText source, ProblemList problems)
    {
        problems.Open(source);
        if (source.Text.Length > Limits.FileCharacters)
        {
            problems.Add(source.Place(1, 1), Messages.TooLong());
            return null;
        }

        HashScan.Run(source, problems);
        var text = Characters.Plain(source, problems);
        try
        {
            return YamlReader.Read(source, text, problems);
        }
        catch (ShapeFault fault)
        {
            return ReadOn(source, text, fault, problems);
        }
    }

    private static Node? ReadOn(SourceText source, string text, ShapeFault first, ProblemList problems)
    {
        if (first.Reason.Code is "too-much" or "too-deep")
        {
            problems.Add(first.At, first.Reason);
            return null;
        }

        var lines = ShapeScan.Mend(source, text, problems).Split('\n');
        for (var i = 0; i < MostGivenUp && (i < 2 || text.Length < LongText); i++)
        {
            try
            {
                var root = YamlReader.Read(source, string.Join('\n', lines), problems);
                if (!problems.Stops)
                {
                    problems.Add(first.At, first.Reason);
                }

                return root;
            }
            catch (ShapeFault fault)
            {
                problems.Add(fault.At, fault.Reason);
                if (lines[fault.At.Line - 1].Length == 0)
                {
                    return null;
                }

                lines = fault.Reason.Code == Messages.SecondDocument().Code ? lines[..(fault.At.Line - 1)]
                    : WithoutLine(lines, fault.At.Line);
            }
        }

        return null;
    }

    private static string[] WithoutLine(string[] lines, int number)
    {
        lines[number - 1] = "";
        return lines;
    }
}
