namespace WetCheck.Model;

/// <summary>One text in the languages it has. English is always there, Spanish may wait.</summary>
public sealed record Words(string En, string? Es = null)
{
    public static readonly Words None = new("");
}
