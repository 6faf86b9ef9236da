using WetCheck.Model;

namespace WetCheck.Pressed;

/// <summary>
/// A rule book as bytes that are read back as the same objects, without reading YAML. They hold for the build that made
/// them.
/// </summary>
public static class PressedBook
{
    public static byte[] Write(RuleBook book) => Wire.Write(book, Carry.RuleBook);

    /// <summary>Of what <see cref="Write"/> made. The rules' texts are read when they are first asked for.</summary>
    public static RuleBook Read(byte[] pressed) => Wire.Read<RuleBook>(pressed, Carry.RuleBook);

    public static byte[] WriteCases(IReadOnlyList<RuleCase> cases) => Wire.Write(cases, Carry.RuleCases);

    public static IReadOnlyList<RuleCase> ReadCases(byte[] pressed) => Wire.Read<IReadOnlyList<RuleCase>>(pressed, Carry.RuleCases);
}
