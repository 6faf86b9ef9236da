using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Reads a table of levels as programs of instruments write it, comma separated: a first line that names the columns,
/// then one line for each point.
/// </summary>
internal sealed class LevelTable(SourceText source, Unit? lone, ProblemList problems)
{
    private static readonly string[] s_columns = ["from left", "from entry", "up", "down"];

    /// <returns>Null where no point could be read. Lines that can't be read are told, the others count.</returns>
    public ReadingValue.OfLevels? Read()
    {
        var points = new List<(Rational, Rational, Rational)>();
        Unit? unit = null;
        int[]? columns = null;
        for (var line = 1; line <= source.Lines.Count; line++)
        {
            if (string.IsNullOrWhiteSpace(source.Line(line)))
            {
                continue;
            }

            var cells = Cells(source.Line(line));
            if (columns is null)
            {
                columns = Columns(cells);
                if (columns is null)
                {
                    problems.Add(source.Place(line, 1), Messages.LevelsHeader(source.Line(line)));
                    return null;
                }
            }
            else if (points.Count >= Limits.Levels)
            {
                problems.Add(source.Place(line, 1), Messages.TooManyLevels());
                return null;
            }
            else if (Point(line, cells, columns) is var (left, entry, up, typed))
            {
                points.Add((left, entry, up));
                unit ??= typed;
            }
            else if (lone is null && points.Count == 0)
            {
                // Without the units no line can be read; one message is enough.
                return null;
            }
        }

        return points.Count == 0 ? null : new ReadingValue.OfLevels(new LevelSet(points), unit!);
    }

    private (Rational Left, Rational Entry, Rational Up, Unit Unit)? Point(int line, List<(int Start, string Typed)> cells, int[] columns)
    {
        var read = new List<LevelSets.Level>();
        foreach (var column in columns.Where(column => column >= 0))
        {
            if (column >= cells.Count || cells[column].Typed.Length == 0)
            {
                problems.Add(source.Place(line, 1), Messages.LevelsLine(source.Line(line)));
                return null;
            }

            var height = read.Count < 2 ? LevelSets.Place(cells[column].Typed, lone) : LevelSets.Height(cells[column].Typed, lone);
            if (!height.IsRead)
            {
                problems.Add(source.Place(line, 1 + cells[column].Start + height.Fault.Offset), Messages.Quantity(height.Fault));
                return null;
            }

            read.Add(height.Value);
        }

        return (read[0].Inches, read[1].Inches, columns[2] < 0 ? -read[2].Inches : read[2].Inches, read[2].Unit);
    }

    /// <summary>Where each column stands, -1 for the one of the last two that is not there; null: they are not all there.</summary>
    private static int[]? Columns(List<(int Start, string Typed)> cells)
    {
        int[] at = [.. s_columns.Select(name => cells.FindIndex(cell => Names.Same(cell.Typed, name)))];
        return at[0] >= 0 && at[1] >= 0 && at[2] >= 0 != at[3] >= 0 ? at : null;
    }

    private static List<(int Start, string Typed)> Cells(string line)
    {
        var cells = new List<(int, string)>();
        var start = 0;
        foreach (var cell in line.Split(','))
        {
            var typed = cell.Trim().Trim('"').Trim();
            cells.Add((start + Math.Max(0, cell.IndexOf(typed, StringComparison.Ordinal)), typed));
            start += cell.Length + 1;
        }

        return cells;
    }
}
