using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>A set of names as a constant of the network: equal sets share their nodes, so the array takes no part in equality.</summary>
public sealed record Names(string Joined)
{
    public static readonly Names None = new("");

    private readonly string[] _names = Joined.Split('|', StringSplitOptions.RemoveEmptyEntries);

    public static Names Of(IEnumerable<string> names) => new(string.Join('|', names));

    public static bool HasKind(PartState state, Names names) => names._names.Contains(state.Kind);

    public static bool HasReading(Conclusion conclusion, Names names) => names._names.Contains(conclusion.Reading);

    public bool Any(Func<string, bool> holds) => Array.Exists(_names, name => holds(name));

    public bool Equals(Names? other) => other?.Joined == Joined;

    public override int GetHashCode() => Joined.GetHashCode(StringComparison.Ordinal);
}
