using System.Text.RegularExpressions;
using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Drawings;

/// <summary>
/// A drawing of rough levels, or of one level with a lost point, ends, and has no more lines and names than can be
/// read.
/// </summary>
public sealed class ManyContours
{
    private const string Job =
        "method: liner under mortar\nunits: inches\nstage: before grout\nplumbing code: IRC 2021\nshower:\n  size: 60 "
        + "x 36 finished\n  drain at: 30, 18\ndrain:\n  grate: 4-1/4\nfloor:\n  levels: ";

    [Theory]
    [InlineData(100)]
    [InlineData(12)]
    public void Ends(int height)
    {
        var chance = new Random(height);
        var levels =
            string.Join("  ",
            Enumerable.Range(0, 14)
            .SelectMany(x => Enumerable.Range(0, 9).Select(y => $"{x * 4},{y * 4} {chance.Next(height * 4)}/4"))
            .Select(Mixed));
        var walk = TheBook.Walk(Job + levels + "\n");
        var svg = ContourDrawing.Of(FloorSheets.Of(walk.Job, walk.Book), walk, "en");
        Regex.Count(svg!, "<text ").Should().BeLessThan(2 * (Limits.Contours + Limits.NamedPonds));
    }

    /// <summary>"0,0 7/4" as a tape has it: <c>0,0 1-3/4</c>.</summary>
    private static string Mixed(string level)
    {
        var (at, quarters) =
            (level.Split(' ')[0],
            int.Parse(level.Split(' ')[1].Split('/')[0], System.Globalization.CultureInfo.InvariantCulture));
        return quarters % 4 == 0 ? $"{at} {quarters / 4}"
            : $"{at} {quarters / 4}-{quarters % 4}/4".Replace(" 0-", " ", StringComparison.Ordinal)
            .Replace("2/4", "1/2", StringComparison.Ordinal);
    }
}
