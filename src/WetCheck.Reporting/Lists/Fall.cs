using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A fall is spoken of in the form it was read.</summary>
internal static class Fall
{
    /// <summary>Null for any other reading, and for one that was worked out.</summary>
    public static ReadingValue.OfFall? Of(Fact? fact) => fact?.Counted?.Value as ReadingValue.OfFall;
}
