using System.Collections.ObjectModel;

namespace WetCheck.Reporting;

/// <summary>Two figures in JSON, <c>[30, 18]</c>: a place, or from and to.</summary>
internal sealed class TwoFigures(decimal first, decimal second) : ReadOnlyCollection<decimal>([first, second]);

/// <summary>The least and the most that is known in JSON, null at an end that nothing is known of.</summary>
internal sealed class TwoEnds(decimal? least, decimal? most) : ReadOnlyCollection<decimal?>([least, most]);
