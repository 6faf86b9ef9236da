namespace WetCheck.Intake;

/// <summary>Every sentence about a quantity that can't be taken as it stands.</summary>
internal static class Faults
{
    public static Fault NothingThere(string text, string wanted) => new("no-number", text.Length, $"Nothing is written here. Write {wanted}.");
}
