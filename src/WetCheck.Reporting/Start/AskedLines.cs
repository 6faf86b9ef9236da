namespace WetCheck.Reporting;

/// <summary>Lines that one of a method's <c>asks</c> stands for.</summary>
/// <param name="Short">The same on one line; null: there is no such way.</param>
/// <param name="Rank">How soon they are wanted, soonest first.</param>
internal sealed record AskedLines(StartSection Long, StartSection? Short, int Rank)
{
    /// <summary>Added to the rank of what is asked where there is room.</summary>
    public const int After = 100;

    public IEnumerable<StartSection> Ways(bool shortFirst) => (shortFirst ? new[] { Short, Long } : [Long, Short]).OfType<StartSection>();
}
