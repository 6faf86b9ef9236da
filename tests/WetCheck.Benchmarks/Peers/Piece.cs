using WetCheck.Model;

namespace WetCheck.Benchmarks.Peers;

/// <summary>A drawn part, its readings exact, as checks written by hand see it; a missing reading is unknown.</summary>
internal sealed record Piece(int Number, Rational? Drop, Rational? Gap, Rational? Run, string? Stuff);

/// <summary>The same part in floating numbers, the quickest form for the general library. Sixteenths are exact in them.</summary>
public sealed record PlainPiece(int Number, double Drop, double Gap, double Run, string Stuff);
