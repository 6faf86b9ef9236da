using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>Order of looks. False stands before true, so each flag says what stands behind. No weights.</summary>
internal readonly record struct LookRank(bool NotShort, bool NotMethod, bool NotHiddenNext, Severity Severity,
    int SettlesFewer, Effort Effort, int Walking)
    : IComparable<LookRank>
{
    public static bool operator <(LookRank a, LookRank b) => a.CompareTo(b) < 0;

    public static bool operator >(LookRank a, LookRank b) => a.CompareTo(b) > 0;

    public static bool operator <=(LookRank a, LookRank b) => a.CompareTo(b) <= 0;

    public static bool operator >=(LookRank a, LookRank b) => a.CompareTo(b) >= 0;

    public int CompareTo(LookRank other) =>
        (NotShort, NotMethod, NotHiddenNext, Severity, SettlesFewer, Effort, Walking).CompareTo(
            (other.NotShort, other.NotMethod, other.NotHiddenNext, other.Severity, other.SettlesFewer, other.Effort, other.Walking));
}
