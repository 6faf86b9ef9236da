using WetCheck.Geometry;
using WetCheck.Model;

namespace WetCheck.Flow;

/// <summary>From a job to the sheets of its floor: falls, held against the limits of the book, and what follows from them.</summary>
internal static class FloorSheets
{
    public static FloorReport Of(Job job, RuleBook book)
    {
        var known = Derive.From(job, book.Vocabulary);
        var falls = PanFalls.Of(job, book, known);
        var heights = FloorHeights.Of(job, book, known, falls);
        return new FloorReport(
            falls,
            heights,
            FloorMarks.Of(job, known, falls),
            FloorMud.Of(job, book, known, falls),
            FloorLevels.Of(job, known, falls),
            FloorTiles.Of(job, book, known, falls, heights),
            FloorLiner.Of(job, known, falls, heights));
    }
}
