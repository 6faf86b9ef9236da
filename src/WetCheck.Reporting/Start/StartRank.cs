using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>How soon an answer is wanted. A file has room for the soonest; the rest is asked when its stop comes.</summary>
internal sealed class StartRank(Job job)
{
    private const int Now = 0;
    private const int HiddenLast = 100;

    /// <summary>
    /// What can be seen now; what tells where another level will stand; what comes, nearest stop first; what is hidden.
    /// Null: it can't be answered before its stop.
    /// </summary>
    public int? Of(PartKind kind, ReadingKind reading) =>
        kind.Places.Select(reading.LayerOf).DefaultIfEmpty(reading.Layer).Select(layer => Of(layer, kind, reading)).Min();

    private int? Of(string? layer, PartKind kind, ReadingKind reading) => job.SightOf(layer) switch
    {
        Sight.ToBeSeen => Now,
        Sight.Hidden => HiddenLast,

        // A test has no plan, and nobody plans nails: they are found.
        _ when reading.Effort == Effort.Test || kind.Many == Many.List => null,
        _ when reading.Lifts is not null => 1,
        _ => 1 + job.Method!.IndexOf(job.Method.Layers.First(known => known.Name == layer).Made) - job.Method.IndexOf(job.Stage!),
    };
}
