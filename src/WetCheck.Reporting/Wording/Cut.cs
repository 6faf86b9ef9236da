namespace WetCheck.Reporting;

/// <summary>A name longer than anyone says is shown by its beginning.</summary>
internal static class Cut
{
    /// <summary>Room for job, house and room.</summary>
    private const int Longest = 100;

    public static string Name(string name) => name.Length <= Longest ? name : Beginning(name, Longest - 3) + "...";

    /// <summary>Never half of a sign that takes two.</summary>
    public static string Beginning(string text, int length) =>
        length > 0 && length < text.Length && char.IsHighSurrogate(text[length - 1]) ? text[..(length - 1)]
            : text[..Math.Clamp(length, 0, text.Length)];
}
