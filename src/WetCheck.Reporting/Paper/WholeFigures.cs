using System.Text.RegularExpressions;

namespace WetCheck.Reporting;

/// <summary>Keeps a tape fraction on one line of a page: browsers break <c>1-3/4"</c> at its hyphen.</summary>
internal static partial class WholeFigures
{
    /// <param name="html">Escaped text, or HTML: only what stands between tags is touched.</param>
    public static string Of(string html) =>
        Text().Replace(html,
        text => Figure().Replace(text.Value, figure => $"<span class=\"figure\">{figure.Value}</span>"));

    [GeneratedRegex("(?<=^|>)[^<>]+")]
    private static partial Regex Text();

    /// <summary>After escaping an inch mark is <c>&amp;quot;</c>, a foot mark <c>&amp;#39;</c>.</summary>
    [GeneratedRegex(@"\d+(-|(&#39;|')-\d+ )\d+/\d+(&quot;|"")?|\d+(&#39;|')-\d+(&quot;|"")")]
    private static partial Regex Figure();
}
