using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The drain as a job tells it: where it stands, and what the floor falls to.</summary>
internal static class DrainTold
{
    public static (PlanPoint? Place, PanMissing? Missing) Place(Fact? at, Outline? outline, bool metric)
    {
        if (at?.OnPaper is not Known.Pair pair)
        {
            return (null, MissingLine.Of(at is { Clash: true } ? "drain-clash" : "no-drain", MissingLine.DrainAt, metric));
        }

        var place = new PlanPoint(FloorTold.Inches(pair.First), FloorTold.Inches(pair.Second));
        return outline is null || outline.Contains(place) ? (place, null)
            : (null, MissingLine.Of("drain-outside", MissingLine.DrainAt, metric));
    }

    /// <summary>All ways to take it that can be worked out, and what is missing for the others.</summary>
    public static (IReadOnlyList<(DrainTaken Taken, Grate Grate)> Ways,
        IReadOnlyList<PanMissing> Missing) Ways(IReadOnlyDictionary<string, Fact> drain, bool metric)
    {
        var (across, length) = (Length(drain, "grate"), Length(drain, "channel length"));
        if (Choice(drain, "form") == "channel")
        {
            PanMissing?[] missing =
            [
                across is null ? MissingLine.Of("no-grate", MissingLine.Grate, metric) : null,
                length is null ? MissingLine.Of("no-channel-length", MissingLine.ChannelLength, metric) : null,
                Choice(drain, "channel runs") is null ? MissingLine.Of("no-channel-way", MissingLine.ChannelRuns, metric) : null,
            ];
            return missing.OfType<PanMissing>().ToList() is { Count: > 0 } lacking ? ([], lacking)
                : ([(DrainTaken.Channel,
                    Grate.Channel(length!.Value, across!.Value,
                    Choice(drain, "channel runs") == "side to side" ? 0 : 90))], []);
        }

        (DrainTaken, Grate) point = (DrainTaken.Point, Grate.Point);
        return (across, Choice(drain, "grate shape")) switch
        {
            ({ } wide, "square") => ([point, (DrainTaken.Grate, Grate.Square(wide / 2))], []),
            ({ } wide, "round") => ([point, (DrainTaken.Grate, Grate.Round(wide / 2))], []),
            ({ }, _) => ([point], [MissingLine.Of("no-grate-shape", MissingLine.GrateShape, metric)]),
            _ => ([point], [MissingLine.Of("no-grate", MissingLine.Grate, metric)]),
        };
    }

    private static string? Choice(IReadOnlyDictionary<string, Fact> drain, string reading) =>
        (drain.GetValueOrDefault(reading)?.OnPaper as Known.OneOf)?.Choice;

    /// <summary>Only one number is a length; a bound is not.</summary>
    private static double? Length(IReadOnlyDictionary<string, Fact> drain, string reading) =>
        drain.GetValueOrDefault(reading)
            ?.OnPaper is Known.Number { Spread.AsRead: { IsPoint: true, Lo: { Sign: > 0 } inches } }
            ? inches.Approximate : null;
}
