using System.Globalization;

namespace WetCheck.Intake;

/// <summary>Dates as RFC 3339 writes them: <c>2026-11-25</c>, or with time and offset.</summary>
internal static class Dates
{
    private static readonly string[] s_forms =
        ["yyyy-MM-dd", "yyyy-MM-dd'T'HH:mmK", "yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK",
            "yyyy-MM-dd HH:mmK", "yyyy-MM-dd HH:mm:ssK"];

    public static DateTimeOffset? Read(string text) =>
        DateTimeOffset.TryParseExact(text.Trim(), s_forms, CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal, out var read) ? read : null;

    /// <summary>Whether it was meant for a date: it starts with digits and dashes, or slashes.</summary>
    public static bool LooksLikeOne(string text) =>
        text.Length >= 6 && char.IsAsciiDigit(text[0]) && text.Count(c => c is '-' or '/' or '.') >= 2;
}
