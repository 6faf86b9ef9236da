using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The floor's tile and its grid as a job tells them.</summary>
internal sealed class TileTold
{
    private readonly bool _metric;

    public TileTold(IReadOnlyList<PartState> known, bool metric)
    {
        _metric = metric;
        var tile = known.FirstOrDefault(part => part.Kind == "tile")?.Facts ?? new Dictionary<string, Fact>();
        (Short, Long, Joint) = (Length(tile, "floor tile"), Length(tile, "floor tile long"), Length(tile, "floor joint"));
        From = tile.GetValueOrDefault("grid from")?.OnPaper is Known.Pair at
            ? new PlanPoint(FloorTold.Inches(at.First), FloorTold.Inches(at.Second)) : null;
        Way = (tile.GetValueOrDefault("grid")?.OnPaper as Known.OneOf)?.Choice;
    }

    public double? Short { get; }

    public double? Long { get; }

    public double? Joint { get; }

    public PlanPoint? From { get; }

    public string? Way { get; }

    public bool IsDiagonal => Way == "on the diagonal";

    /// <summary>Null where any of it is not told.</summary>
    public TileGrid? Grid =>
        this is { Short: { } wide, Long: { } along, Joint: { } joint, From: { } from, Way: not null }
        ? new TileGrid(along, wide, joint, from, IsDiagonal ? 45 : 0) : null;

    public IEnumerable<PanMissing> Missing
    {
        get
        {
            (bool IsMissing, string Key, string Line)[] all =
            [
                (Short is null, "no-tile", MissingLine.Tile), (Long is null, "no-tile-long", MissingLine.TileLong),
                    (Joint is null, "no-joint", MissingLine.Joint),
                (From is null, "no-grid-from", MissingLine.GridFrom), (Way is null, "no-grid", MissingLine.Grid),
            ];
            return all.Where(one => one.IsMissing).Select(one => MissingLine.Of(one.Key, one.Line, _metric));
        }
    }

    private static double? Length(IReadOnlyDictionary<string, Fact> tile, string reading) =>
        tile.GetValueOrDefault(reading)
            ?.OnPaper is Known.Number { Spread.AsRead: { IsPoint: true, Lo: { Sign: >= 0 } inches } }
            ? inches.Approximate : null;
}
