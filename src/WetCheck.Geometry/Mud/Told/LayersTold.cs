using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>What a job says of the layers under its floor: which there are, how thick, and which of them makes the fall.</summary>
internal sealed class LayersTold(Job job, IReadOnlyList<PartState> known)
{
    private readonly bool _metric = job.Metric == true;

    public BuiltAs? Built => job.Method?.Name switch
    {
        "liner under mortar" => BuiltAs.LinerUnderMortar,
        "bonded membrane with curb" or "curbless bonded" => BuiltAs.BondedMembrane,
        "formed tray" => BuiltAs.FormedTray,
        _ => null,
    };

    /// <summary>Thickness of the bed where it is thinnest.</summary>
    public Interval Bed => Length("bed", "thickness");

    /// <summary>Thickness of the slope under the liner, at the drain.</summary>
    public Interval PreSlope => Length("pre-slope", "at drain");

    /// <summary>What the liner lies on; null: not said.</summary>
    public string? UnderLiner => (Fact("pre-slope", "made of")?.OnPaper as Known.OneOf)?.Choice;

    /// <summary>Rims of the layers below, as far as what lies between is known.</summary>
    public IEnumerable<MarkBelow> Marks()
    {
        if (Built is not (BuiltAs.LinerUnderMortar or BuiltAs.BondedMembrane)
            || Length("tile", "floor adds") is not { IsPoint: true, Lo: { } tile })
        {
            yield break;
        }

        yield return new MarkBelow("bed", tile.Approximate);

        // A bed of even thickness: the same fall below it.
        if (Built == BuiltAs.LinerUnderMortar && UnderLiner is null or "sloped mortar" && Bed is { IsPoint: true, Lo: { } bed })
        {
            yield return new MarkBelow("pre-slope", (tile + bed).Approximate);
        }
    }

    public IEnumerable<PanMissing> Missing(bool forMarks)
    {
        if (job.Method is null)
        {
            yield return MissingLine.Of("no-method", MissingLine.Method, _metric);
        }

        if (Built is null or BuiltAs.FormedTray)
        {
            yield break;
        }

        if (forMarks && !Length("tile", "floor adds").IsPoint)
        {
            yield return MissingLine.Of("no-tile-adds", MissingLine.TileAdds, _metric);
        }

        if ((!forMarks || Built == BuiltAs.LinerUnderMortar) && !Bed.IsPoint)
        {
            yield return MissingLine.Of("no-bed", MissingLine.Bed, _metric);
        }

        if (!forMarks && Built == BuiltAs.LinerUnderMortar && UnderLiner is null or "sloped mortar" && !PreSlope.IsPoint)
        {
            yield return MissingLine.Of("no-pre-slope", MissingLine.PreSlope, _metric);
        }
    }

    /// <summary>As read or planned, or the bounds of it; never below nothing.</summary>
    private Interval Length(string kind, string reading) =>
        Fact(kind, reading)?.OnPaper is Known.Number number ? number.Spread.AsRead.Intersect(Interval.AtLeast(0)) : Interval.AtLeast(0);

    private Fact? Fact(string kind, string reading) =>
        known.FirstOrDefault(part => part.Kind == kind && part.Exists != Tri.No)?.Facts.GetValueOrDefault(reading);
}
