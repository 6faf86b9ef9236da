using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static string Text(Wire wire, string? text) => wire.Text(text);

    private static At At(Wire wire, At? at) => wire.Same(at, static (wire, at) =>
        new At(wire.Text(at?.File), wire.Number(at?.Line ?? 0), wire.Number(at?.Column ?? 0)));

    private static Words Words(Wire wire, Words? words) => wire.Same(words, static (wire, words) =>
        new Words(wire.Text(words?.En), wire.MaybeText(words?.Es)));

    private static RuleTexts RuleTexts(Wire wire, RuleTexts? texts) => wire.Same(texts, static (wire, texts) => new RuleTexts(
        wire.Text(texts?.One),
        wire.Text(texts?.Many),
        wire.Text(texts?.Say),
        wire.Text(texts?.Two),
        wire.Text(texts?.Why),
        wire.Text(texts?.Fix),
        wire.Text(texts?.Seen),
        wire.Text(texts?.Ask),
        wire.Text(texts?.Good),
        wire.Text(texts?.Helper),
        wire.Text(texts?.See)));
}
