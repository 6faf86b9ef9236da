namespace WetCheck.Model;

/// <summary>One room, as its file and log tell it. Every kind of the vocabulary has its parts here, blank ones too.</summary>
/// <param name="Method">Null: not said, or not one the book has.</param>
/// <param name="Stage">Null: not said, or no stop of the method.</param>
/// <param name="Metric">From the units line; null when it is blank.</param>
/// <param name="Codes">Stated codes by discipline. A family that the book does not have keeps its name.</param>
/// <param name="Lists">One for each kind of part that there can be any number of.</param>
/// <param name="Where">Where a line stands, or would stand, by its path: <c>curb.height</c>.</param>
public sealed record Job(
    string Name,
    string File,
    Method? Method,
    string? Stage,
    bool? Metric,
    IReadOnlyDictionary<string, StatedCode> Codes,
    IReadOnlyList<JobPart> Parts,
    IReadOnlyList<JobList> Lists,
    string? ReadingsBy,
    string? Notes,
    IReadOnlyDictionary<string, At> Where)
{
    /// <summary>Files of local changes, as typed on the line <c>local:</c>.</summary>
    public IReadOnlyList<(string File, At At)> Local { get; init; } = [];

    /// <summary>Whether something that belongs to a layer can be seen at this stop. Stage or method unknown: it is to be seen.</summary>
    public Sight SightOf(string? layer)
    {
        if (layer is null || Method is null || Stage is null || Method.Layers.FirstOrDefault(l => l.Name == layer) is not { } found)
        {
            return Sight.ToBeSeen;
        }

        var now = Method.IndexOf(Stage);
        return now < Method.IndexOf(found.Made) ? Sight.NotBegun
            : found.Hidden is { } hidden && now >= Method.IndexOf(hidden) ? Sight.Hidden
            : Sight.ToBeSeen;
    }
}

/// <summary>A code the job says applies; a year or none.</summary>
public sealed record StatedCode(string Family, int? Edition, string Typed, At At, bool InBook);
