namespace WetCheck.Model;

/// <summary>A place in a file. Line and column count from 1; column in UTF-16 units.</summary>
public sealed record At(string File, int Line, int Column)
{
    public static readonly At Nowhere = new("", 0, 0);

    public override string ToString() =>
        Line == 0 ? File : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}");
}
