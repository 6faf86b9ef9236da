using WetCheck.Model;

namespace WetCheck.Benchmarks.Peers;

/// <summary>What one check says of one piece.</summary>
/// <param name="Slack">Inches on the good side of the test that decides; null where a choice decides.</param>
internal sealed record Verdict(int Check, int Piece, Outcome Outcome, Rational? Slack);
