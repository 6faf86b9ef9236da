using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What holds for the whole job: the lines at its top.</summary>
internal sealed record Header
{
    public string Name { get; init; } = "";

    public Method? Method { get; init; }

    public string? Stage { get; init; }

    public bool? Metric { get; init; }

    public IReadOnlyDictionary<string, StatedCode> Codes { get; init; } = new Dictionary<string, StatedCode>();

    public string? ReadingsBy { get; init; }

    /// <summary>Who, with what and when, of all readings that don't say otherwise.</summary>
    public Provenance By { get; init; } = Provenance.Nobody;

    public IReadOnlyList<(string File, At At)> Local { get; init; } = [];

    public string? Notes { get; init; }

    /// <summary>What a number without a unit is read in; null asks.</summary>
    public Unit? Lone => Metric switch { true => Unit.Millimetre, false => Unit.Inch, null => null };
}
