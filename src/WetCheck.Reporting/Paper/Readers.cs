namespace WetCheck.Reporting;

/// <summary>Whom a list is for. Findings, numbers, results and counts are the same for each; words, depth and order differ.</summary>
public enum Reader { Setter, Owner, Helper }

/// <summary>The readers as they are typed after <c>--for</c>.</summary>
public static class Readers
{
    public static readonly string[] Typed = ["setter", "owner", "helper"];

    /// <param name="typed">One of <see cref="Typed"/>; null is the setter.</param>
    public static Reader Of(string? typed) => typed switch { "owner" => Reader.Owner, "helper" => Reader.Helper, _ => Reader.Setter };

    /// <summary>A helper's list has both languages in one row unless one is asked for.</summary>
    public static string Language(Reader reader) => reader == Reader.Helper ? Languages.Both : Languages.English;
}
