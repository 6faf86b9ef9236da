using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Leaves one join or production out of a network, so that a test can show that it is needed.</summary>
internal sealed class Cut(CutWhat what)
{
    public static readonly Cut Nothing = new(CutWhat.Nothing);

    public CutWhat What { get; } = what;

    /// <summary>The states a session began with: what a check sees of the parts it no longer joins.</summary>
    public IReadOnlyList<PartState> First { get; set; } = [];
}

internal enum CutWhat { Nothing, Nearest, Related, Conclusions, Rules, Climbs }
