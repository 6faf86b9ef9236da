using System.Globalization;

namespace WetCheck.Asking;

/// <summary>The time of an answer as the log has it: RFC 3339, to the millisecond, with its offset.</summary>
internal static class Stamp
{
    public static string Of(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm:ss.fffzzz", CultureInfo.InvariantCulture);

    /// <exception cref="FormatException">It is none that <see cref="Of"/> made.</exception>
    public static DateTimeOffset Read(string stamp) => DateTimeOffset.Parse(stamp, CultureInfo.InvariantCulture);
}
