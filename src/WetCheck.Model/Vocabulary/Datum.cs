namespace WetCheck.Model;

/// <summary>A level that heights are read from.</summary>
/// <param name="Of">The kind of part it belongs to: no curb, no rough curb.</param>
public sealed record Datum(string Name, string Of, Words Say);
