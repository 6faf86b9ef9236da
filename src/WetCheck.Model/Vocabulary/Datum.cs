namespace WetCheck.Model;

/// <summary>A level that heights are read from.</summary>
/// <param name="Of">The kind of part it belongs to: no curb, no rough curb.</param>
public sealed record Datum(string Name, string Of, Words Say);

/// <summary>A step between two datums that nature sets: water stands to the top of the finished curb.</summary>
/// <param name="Exactly">How far <paramref name="Datum"/> stands above <paramref name="Above"/>, a length.</param>
public sealed record DatumStep(string Datum, Quantity Exactly, string Above);
