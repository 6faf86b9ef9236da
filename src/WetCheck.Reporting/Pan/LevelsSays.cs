using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What level readings come to, in one language and the units of the job.</summary>
internal sealed record LevelsSays(PanSays Pan)
{
    private Phrases Phrases => Pan.Phrases;

    public string Count(LevelReport levels) => levels.Spacing is { } spacing
        ? Phrases.Say(Phrase.Levels.CountSpaced, ("count", $"{levels.Readings}"),
            ("half", Pan.Length(levels.Half ?? 0, Rounding.Up)), ("spacing", Pan.Length(Coarse(spacing, Math.Round))))
        : Phrases.Say(Phrase.Levels.Count, ("count", $"{levels.Readings}"), ("half", Pan.Length(levels.Half ?? 0, Rounding.Up)));

    /// <summary>The fall of planes or folds, then what each limit says of it; those alike in one.</summary>
    public IEnumerable<string> Planes(IReadOnlyList<LevelPlane> planes) => planes
        .GroupBy(plane => (IsFold: plane.Corner is not null, Said: string.Join(' ', [Fall(plane), .. plane.Held.SelectMany(Held)])))
        .Select(alike =>
            Sentence.Capital(Phrases.Say(alike.Key.IsFold ? Phrase.Levels.Fold : planes.Count == 1
            ? Phrase.Levels.OnePlane : Phrase.Levels.Wall,
            (alike.Key.IsFold ? "corner" : "side", Pan.Alike(alike.Select(Named))), ("fall", alike.Key.Said))));

    /// <summary>Readings on one line tell how deep it is, not how wide.</summary>
    public string Pond(LevelPond pond) =>
        Phrases.Say(pond.Least <= 1e-9 ? Phrase.Levels.PondOpen : pond.Area > 0 ? Phrase.Levels.Pond
        : Phrase.Levels.PondOnLine,
        ("depth", Pan.Length(pond.Depth)), ("at", Pan.Place(pond.At)),
            ("least", Pan.Length(pond.Least, Rounding.Down)), ("most", Pan.Length(pond.Most, Rounding.Up)),
        ("area", Pan.Of(pond.Area, Pan.Metric ? Unit.SquareMetre : Unit.SquareInch)),
            ("volume", Pan.Of(pond.Volume, Pan.Metric ? Unit.Litre : Unit.CubicInch)));

    public string Bump(LevelBump bump) => Phrases.Say($"levels.{(bump.Off > 0 ? "shave" : "add")}{(bump.Readings > 1 ? "-more" : "")}",
        ("off", Pan.Length(Math.Abs(bump.Off))), ("at", Pan.Place(bump.At)), ("count", $"{bump.Readings}"));

    public string Flat(LevelFlat flat) => Phrases.Say(Phrase.Levels.Flat, ("at", Pan.Place(flat.At)), ("most", Of(flat.Most, Rounding.Up)));

    public string Again(LevelAgain again) => Phrases.Say($"levels.again-{again.Key}", ("at", Pan.Place(again.At)));

    public string? Hides(LevelReport levels) =>
        levels.Spacing is { } spacing
        ? Phrases.Say(Phrase.Levels.Hides,
        ("width", Pan.Length(Coarse(2 * spacing, steps => Math.Ceiling(steps - 1e-6))))) : null;

    private string Named(LevelPlane plane) =>
        plane.Corner is not { } at || plane.Place.Length > 0 ? Pan.Side(plane.Place)
        : Phrases.Say(Phrase.Pan.Corner, ("at", Pan.Place(at)));

    /// <summary>Distances of points go by half inches or centimetres; finer says more than they tell.</summary>
    private double Coarse(double inches, Func<double, double> round) => Pan.Metric ? round(inches * 2.54) / 2.54 : round(inches * 2) / 2;

    private string Fall(LevelPlane plane)
    {
        var (least, most) = (plane.Least is { } low ? Of(low, Rounding.Down) : "", plane.Most is { } high ? Of(high, Rounding.Up) : "");
        return plane.Uneven > 0 ? Phrases.Say(Phrase.Levels.Uneven, ("uneven", Pan.Length(plane.Uneven, Rounding.Down)))
            : (plane.Estimate, plane.Least, plane.Most) switch
            {
                ({ } read, { }, { }) => Say(Phrase.Levels.AsRead, read),
                ({ } read, { }, null) => Say(Phrase.Levels.AtLeast, read),
                ({ } read, null, { }) => Say(Phrase.Levels.AtMost, read),
                ({ } read, null, null) => Say(Phrase.Levels.Open, read),
                (null, { }, { }) => Say(Phrase.Levels.TooFew, 0),
                _ => Phrases[Phrase.Levels.Unplaced],
            };

        string Say(string key, double read) => Phrases.Say(key, ("estimate", Of(read, Rounding.Nearest)), ("least", least), ("most", most));
    }

    /// <summary>Thousandths of an inch per foot: a mark of the tape is too coarse to tell a bound from the limit that it fails.</summary>
    private string Of(double slope, Rounding rounding)
    {
        var thousandths = slope * 12_000;
        var whole = rounding switch
        {
            Rounding.Down => Math.Floor(thousandths + 1e-4),
            Rounding.Up => Math.Ceiling(thousandths - 1e-4),
            _ => Math.Round(thousandths),
        };
        return Pan.Metric ? Pan.Fall(slope, rounding)
            : Phrases.Say(Phrase.Levels.PerFoot,
            ("fall", (whole / 1000).ToString("0.000", CultureInfo.InvariantCulture)));
    }

    private IEnumerable<string> Held(LevelHeld held)
    {
        var limits = ("limits", Pan.Limits(held.Limits));
        var worst = held.Steep is { } steep && steep > held.Flat ? steep : held.Flat;
        var said = worst switch
        {
            LevelVerdict.Ok => Phrases.Say(Phrase.Levels.HeldOk, limits),
            LevelVerdict.AtTheLimit => Phrases.Say(Phrase.Levels.HeldAtTheLimit, limits),
            LevelVerdict.ReadAgain => Phrases.Say(Phrase.Levels.HeldReadAgain, limits),
            _ => Phrases.Say(held.Flat == LevelVerdict.Correction ? Phrase.Levels.HeldFlat : Phrase.Levels.HeldSteep, limits),
        };
        return [held.Limits.Disputed ? Phrases.Say(Phrase.Levels.Disputed, ("held", said)) : said];
    }
}
