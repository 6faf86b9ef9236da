namespace WetCheck.Model;

/// <summary>Names one thing that can be known or not: a reading of a part, or one of the names below.</summary>
public readonly record struct FactId(string Part, string Reading)
{
    /// <summary>Whether the part is there at all.</summary>
    public const string Presence = "is there";

    /// <summary>Whether all members of a list have been named. The part is the list's unnamed rest.</summary>
    public const string Whole = "all seen";

    public static readonly FactId Method = new("job", "method");

    public static FactId Code(string discipline) => new("job", discipline + " code");

    public override string ToString() => $"{Part}: {Reading}";
}
