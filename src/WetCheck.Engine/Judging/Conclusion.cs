using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>A yes or no reading that a rule filled, or that climbed from the parts below. Compared by reference.</summary>
public sealed class Conclusion(Part part, string reading, Rule? rule, Tri now, Tri onPaper, IReadOnlyList<Hang> hangs,
    IReadOnlyList<Hang> hangsOnPaper)
{
    public Part Part { get; } = part;

    public string Reading { get; } = reading;

    /// <summary>Null for one that climbed.</summary>
    public Rule? Rule { get; } = rule;

    public Tri Now { get; } = now;

    public Tri OnPaper { get; } = onPaper;

    public IReadOnlyList<Hang> Hangs { get; } = hangs;

    public IReadOnlyList<Hang> HangsOnPaper { get; } = hangsOnPaper;

    public Tri Given(bool onPaper) => onPaper ? OnPaper : Now;

    /// <summary>Says the same as another, so that nothing need be revised.</summary>
    public bool SameAs(Conclusion other) => Now == other.Now && OnPaper == other.OnPaper
        && Hangs.SequenceEqual(other.Hangs) && HangsOnPaper.SequenceEqual(other.HangsOnPaper);
}
