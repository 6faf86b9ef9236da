using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The cut sheet of a job's liner.</summary>
public static class FloorLiner
{
    /// <summary>4, 5 and 6 ft; in a metric job the nearest that such rolls are sold by, from memory.</summary>
    private static readonly double[] s_inches = [48, 60, 72];
    private static readonly double[] s_metric = [1220 / 25.4, 1520 / 25.4, 1830 / 25.4];

    /// <param name="known">All parts of the job, as <see cref="Derive.From"/> gives them. Plans count.</param>
    /// <param name="falls">Of the same job.</param>
    /// <param name="heights">Of the same job: they have the curb, and how high the liner has to stand above it.</param>
    public static LinerReport Of(Job job, IReadOnlyList<PartState> known, PanReport falls, HeightReport heights)
    {
        var metric = job.Metric == true;
        if (!heights.Section.HasLiner)
        {
            return new LinerReport(null, null, []);
        }

        var told = new Standing(known, falls);
        var (width, outside) = (One(told.Number("curb", "rough width")), One(told.Number("liner", "outside")));
        var rough = heights.Section.RoughCurb;
        var asked = heights.Asked.Where(one => one.Key == "turn-up").Select(one => One(one.Least)).ToList();
        var upturn = rough is { } curb && asked.Count > 0 && asked.TrueForAll(one => one is not null) ? curb + asked.Max() : null;
        PanMissing?[] missing =
        [
            falls.Outline.Count == 0 && falls.Missing.Count > 0 ? falls.Missing[0] : null,
            rough is null ? MissingLine.Of("no-rough-curb", MissingLine.Curb, metric) : null,
            rough is not null && upturn is null ? MissingLine.Of("no-cap", MissingLine.Cap, metric) : null,
            width is null ? MissingLine.Of("no-rough-width", MissingLine.RoughWidth, metric) : null,
            outside is null ? MissingLine.Of("no-outside", MissingLine.Outside, metric) : null,
            One(told.Number("wall", "adds")) is null ? MissingLine.Of("no-wall-adds", MissingLine.WallAdds, metric) : null,
        ];
        var cut = falls.Outline.Count > 0 && rough is { } high && upturn is { } up && width is { } wide && outside is { } down
            ? Cut(Floor(falls, One(told.Number("wall", "adds"))), One(told.Number("wall", "adds")) is null, up, (high, wide, down), metric)
            : null;
        return new LinerReport(upturn, cut, [.. missing.OfType<PanMissing>()]);
    }

    /// <summary>Between the studs: a rectangle loses what goes on them at the left, the right and the back.</summary>
    private static Outline Floor(PanReport falls, double? adds)
    {
        var finished = new Outline(falls.Outline.Select(at => new PlanPoint(at.X, at.Y)));
        return adds is { } wall && finished.Corners.Count == 4
            && finished.Walls.All(one => Math.Abs(one.Along.X) < 1e-9 || Math.Abs(one.Along.Y) < 1e-9)
            ? Outline.Rectangle(finished.Corners.Max(at => at.X) - finished.Corners.Min(at => at.X) + (2 * wall),
                finished.Corners.Max(at => at.Y) - finished.Corners.Min(at => at.Y) + wall)
            : finished;
    }

    private static LinerCut Cut(Outline floor, bool isToFinished, double up, (double High, double Wide, double Down) curb, bool metric)
    {
        var names = new SideNames(floor);
        bool IsEntry(int wall) => names.Of(wall) == "entry" || names.Of(wall).StartsWith("entry-", StringComparison.Ordinal);
        var over = LinerSheet.OverCurb(curb.High, curb.Wide, curb.Down);
        var sheet = new LinerSheet(floor, [.. floor.Walls.Select((_, wall) => IsEntry(wall) ? over : up)]);
        var (flaps, corners, rolls) = (sheet.Flaps.ToList(), sheet.Corners.ToList(), metric ? s_metric : s_inches);
        var cuts = rolls.SelectMany(roll => RollCut.Of(sheet.Size, default, [roll], lap: null, clear: 0))
            .OrderBy(cut => cut.Waste).ToList();
        return new LinerCut(
            [.. floor.Corners.Select(At)],
            isToFinished,
            sheet.Size,
            [.. names.Clockwise.Select(wall =>
                new LinerFlap(names.Of(wall), floor.Walls[wall].Length, sheet.Beyond[wall],
                IsEntry(wall) ? [curb.High, curb.High + curb.Wide] : [], [.. flaps[wall].Select(At)]))],
            [.. names.Clockwise.Select(corner =>
                Fold(corner, corners[corner], floor, names,
                IsEntry(corner) || IsEntry((corner + floor.Walls.Count - 1) % floor.Walls.Count), curb.High))],
            [.. cuts.Select(cut => new LinerRoll(cut.Roll, cut.Length, !cut.Turned, cut.Waste))],
            [.. rolls.Where(roll => cuts.TrueForAll(cut => cut.Roll != roll))]);
    }

    /// <summary>At a curb the pleat ends where the sheet is cut to go over it.</summary>
    private static LinerFold Fold(int at, LinerCorner corner, Outline floor, SideNames names, bool isAtCurb, double curb) => new(
        names.OfCorner(at),
        At(floor.Corners[at]),
        corner.Angle,
        corner.NeedsPatch ? 0 : corner.Covers(isAtCurb ? curb : corner.Upturn),
        isAtCurb);

    private static double? One(HeightTold? told) =>
        told is { IsApart: false, Is.AsRead: { IsPoint: true, Lo: { } at } } ? at.Approximate : null;

    private static Spot At(PlanPoint point) => new(point.X, point.Y);
}
