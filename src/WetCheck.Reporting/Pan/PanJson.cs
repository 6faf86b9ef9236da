using WetCheck.Model;
using static WetCheck.Reporting.JsonFigures;

namespace WetCheck.Reporting;

/// <summary>
/// The sheets of a floor for other programs. Lengths in inches, falls in inches per foot. Schema:
/// <c>docs/schemas/pan.schema.json</c>.
/// </summary>
public static class PanJson
{
    /// <summary>Changes when a key changes its meaning or goes.</summary>
    public const string Format = "wetcheck pan 1";

    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var pan = floor.Falls;
        var says = new PanSays(new Phrases(walk.Book, language), walk.Book, walk.Job.Metric == true);
        return JsonPage.Write(
            new PanShape
            {
                Format = Format,
                Language = language,
                When = when,
                Job = walk.Job.Name,
                File = walk.Job.File,
                Rulebook = JsonPage.Book(walk.Book),
                Outline = Ring(pan.Outline),
                Walls = [.. pan.Sides.Select(side => new SideShape { Side = side.Name, Length = Round(side.Length) })],
                CircleAt = Known(pan.Circle?.Middle),
                Circle = Known(pan.Circle?.Across),
                Drain = Known(pan.Drain),
                SecondDrain = Known(pan.Second),
                Ridge = pan.Ridge is var (from, to) ? Ring([from, to]) : [],
                Missing = Missing(pan.Missing, says),
                Limits = [.. pan.Limits.Select(limits => LimitsJson.Shape(limits, says))],
                WithoutLimits = pan.WithoutLimits,
                Cases = [.. pan.Cases.Select(one => PanCaseJson.Shape(one, says))],
                Heights = HeightsJson.Shape(floor.Heights, says),
                Mud = MudJson.Shape(floor.Mud, says),
                Marks = MarksJson.Shape(floor.Marks, says),
                Levels = LevelsJson.Shape(floor.Levels, says),
                Tile = TileJson.Shape(floor.Tile, says),
                Liner = LinerJson.Shape(floor.Liner, says),
                Closing = says.Phrases[Phrase.Close.Record],
            },
            JsonShapes.Default.PanShape);
    }

    internal static IReadOnlyList<MissingShape> Missing(IReadOnlyList<PanMissing> all, PanSays says) =>
        [.. all.Select(missing =>
            new MissingShape { Kind = missing.Key, Line = missing.Line, Write = missing.Write,
            Say = says.Missing(missing) })];
}
