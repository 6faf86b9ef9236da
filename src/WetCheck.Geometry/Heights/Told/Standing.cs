using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>Where everything of a floor stands. The fall is counted once, in the layer that makes it.</summary>
internal sealed class Standing(IReadOnlyList<PartState> known, PanReport falls)
{
    /// <summary>The finished floor is taken as level with it there.</summary>
    public const string Zero = "top of drain";

    public const string LinerZero = "liner at drain";
    private static readonly string[] s_sides = ["entry", "left", "back", "right"];
    private static readonly string[] s_sizes = ["width", "depth"];

    public Levels Levels { get; } = known.Select(part => part.Surroundings).OfType<Surroundings>().First().Levels;

    public PanReport Falls => falls;

    /// <summary>Null where the job has no such level.</summary>
    public HeightTold? Between(string from, string to) => LevelBetween.Of(Levels, from, to);

    public HeightTold? Above(string datum) => Between(Zero, datum);

    public bool IsToStuds =>
        known.FirstOrDefault(part => part.Kind == "shower")?.Facts.GetValueOrDefault("size")
        ?.OnPaper is Known.Pair { Between: Model.Between.ToStuds };

    public bool IsHere(string kind) => known.Any(part => part.Kind == kind && part.Exists != Tri.No);

    /// <summary>Of the finished floor at a wall, or at all: as read, else between the corners as read, else the mark to make.</summary>
    public HeightTold Rim(string? side)
    {
        if (Number("floor", "rim") is { Is.IsUnknown: false } read)
        {
            return read;
        }

        var corners = known.Where(part => part.Kind == "floor corner" && (side is null || Ends(side).Contains(part.Part.Place!.Name)))
            .Select(part => Told(part.Facts.GetValueOrDefault("height"))).Where(height => !height.Is.IsUnknown).ToList();
        if (corners.Count == (side is null ? 4 : 2))
        {
            return new HeightTold(new Spread(Hull(corners.Select(one => one.Is.AsRead)),
                Hull(corners.Select(one => one.Is.Band))), corners.Exists(one => one.IsPlanned), false);
        }

        // The mark that the most readings of the limits allow.
        var mark = falls.Cases.Select(one => one.Mark).OfType<double>().DefaultIfEmpty()
            .MaxBy(at =>
            falls.Cases.Count(one => one.Window is var (least, most) && at >= least - 1e-9 && at <= most + 1e-9));
        return mark > 0 ? new HeightTold(Spread.Exactly((decimal)Math.Round(mark, 9)), true, false) : HeightTold.Unknown;
    }

    public IEnumerable<HeightLine> Lines()
    {
        var adds = Number("tile", "floor adds") ?? HeightTold.Unknown;
        foreach (var (key, datum) in new[] { ("substrate", "floor substrate"), ("liner", LinerZero) })
        {
            if (Above(datum) is { } height)
            {
                yield return new HeightLine(HeightGroup.Drain, key, "", height, Zero);
            }
        }

        if (IsHere("bed"))
        {
            yield return new HeightLine(HeightGroup.Drain, "bed", "", HeightTold.Zero - adds, Zero);
        }

        yield return new HeightLine(HeightGroup.Drain, "floor", "", HeightTold.Zero, Zero);
        foreach (var side in s_sides.Where(_ => IsHere("liner")))
        {
            yield return new HeightLine(HeightGroup.Walls, "liner", side, LinerAt(side), LinerZero);
        }

        foreach (var side in s_sides.Where(_ => IsHere("bed")))
        {
            yield return new HeightLine(HeightGroup.Walls, "bed", side, Rim(side) - adds, Zero);
        }

        foreach (var side in s_sides)
        {
            yield return new HeightLine(HeightGroup.Walls, "floor", side, Rim(side), Zero);
        }
    }

    /// <summary>A number of the only part of a kind; null where the vocabulary or the job has none.</summary>
    public HeightTold? Number(string kind, string reading) =>
        known.FirstOrDefault(part => part.Kind == kind && part.Exists != Tri.No)
            ?.Facts.GetValueOrDefault(reading) is { } fact ? Told(fact) : null;

    public static HeightTold Told(Fact? fact) => fact?.OnPaper is Known.Number number
        ? new HeightTold(number.Spread, fact.Now != fact.OnPaper, fact.Clash)
        : HeightTold.Unknown with { IsApart = fact is { Clash: true } };

    /// <summary>A height that is read on the liner, above it at the drain.</summary>
    public HeightTold AboveLiner(Fact? fact) => fact?.OnPaper is Known.Number number
        ? Told(fact) + (Between(LinerZero, number.Datum ?? fact.Kind.From!) ?? HeightTold.Unknown)
        : HeightTold.Unknown;

    /// <summary>The liner at the foot of a wall above it at the drain: its fall over the run.</summary>
    public HeightTold LinerAt(string side)
    {
        var fall = Told(known.FirstOrDefault(part => part.Kind == "liner facet" && part.Part.Place?.Name == side)
            ?.Facts.GetValueOrDefault("fall"));
        var shower = known.FirstOrDefault(part => part.Kind == "shower")?.Facts;
        if (shower?.GetValueOrDefault("drain at") is not { } at || shower.GetValueOrDefault("size") is not { } size)
        {
            return HeightTold.Unknown;
        }

        var run = new FloorRuns(at.OnPaper, size.OnPaper).To(side);
        return fall with { Is = fall.Is.Map(run, Interval.Product) };
    }

    public IEnumerable<HeightLine> Sizes() => s_sizes
        .Select(side => (side, Fact: known.FirstOrDefault(part => part.Kind == "shower")?.Facts.GetValueOrDefault(side)))
        .Where(one => one.Fact is not null)
        .Select(one => new HeightLine(HeightGroup.Size, one.side, "", Told(one.Fact!.Also ?? one.Fact), null));

    private static string[] Ends(string side) => side switch
    {
        "left" => ["left jamb", "left-back"],
        "right" => ["right jamb", "right-back"],
        "entry" => ["left jamb", "right jamb"],
        _ => ["left-back", "right-back"],
    };

    private static Interval Hull(IEnumerable<Interval> all)
    {
        var list = all.ToList();
        return new Interval(
            list.TrueForAll(one => one.Lo is not null) ? list.Min(one => one.Lo!.Value) : null,
            list.TrueForAll(one => one.Hi is not null) ? list.Max(one => one.Hi!.Value) : null);
    }
}
