namespace WetCheck.Model;

/// <summary>What a code speaks of: plumbing, building, electrical, access, tile.</summary>
public sealed record Discipline(string Name, Words Say, Words Ask, IReadOnlyList<CodeFamily> Families);

/// <summary>A code in all its editions.</summary>
/// <param name="TriedInInches">Tried when none is stated and the job is in inches.</param>
/// <param name="TriedInMillimetres">The same for millimetres. With blank units those of both are tried; a family of
/// neither only where it is stated.</param>
public sealed record CodeFamily(string Name, Words Say, bool TriedInInches, bool TriedInMillimetres);

/// <summary>A family, or some of its editions. Ends are years and belong to it; null is without end.</summary>
public sealed record CodeRange(string Family, int? From = null, int? To = null)
{
    /// <summary>Every edition of <paramref name="other"/> is one of these.</summary>
    public bool Covers(CodeRange other) => Family == other.Family
        && (From is null || other.From >= From) && (To is null || other.To <= To);

    public bool Touches(CodeRange other) => Family == other.Family
        && !(To < other.From) && !(From > other.To);
}
