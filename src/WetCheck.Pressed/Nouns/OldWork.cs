using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static Cause Cause(Wire wire, Cause? cause) => wire.Same(cause, static (wire, cause) => new Cause(
        wire.Text(cause?.Id),
        wire.Text(cause?.Number),
        wire.List(cause?.Given, Condition),
        wire.List(cause?.Needs, Condition),
        wire.List(cause?.Supports, Condition),
        wire.List(cause?.Contradicts, Condition),
        wire.Texts(cause?.Guards),
        wire.Texts(cause?.Dangers),
        wire.Texts(cause?.Rows),
        Words(wire, cause?.Name),
        Words(wire, cause?.How),
        Words(wire, cause?.Next),
        At(wire, cause?.At)));

    private static Opening Opening(Wire wire, Opening? opening) => wire.Same(opening, static (wire, opening) => new Opening(
        wire.Texts(opening?.Gate),
        wire.List(opening?.Expected, Expected),
        wire.List(opening?.Tests, LeakTest),
        wire.List(opening?.Before, Words),
        wire.List(opening?.HowFar, Words),
        wire.List(opening?.NoCures, Words)));

    private static Expected Expected(Wire wire, Expected? expected) => wire.Same(expected, static (wire, expected) => new Expected(
        wire.Maybe(expected?.When, Condition),
        Words(wire, expected?.Say),
        wire.Texts(expected?.Rows),
        At(wire, expected?.At)));

    private static LeakTest LeakTest(Wire wire, LeakTest? test) => wire.Same(test, static (wire, test) => new LeakTest(
        wire.Text(test?.Number),
        Path(wire, test?.Result),
        wire.Texts(test?.Symptoms),
        Words(wire, test?.Do),
        Words(wire, test?.Takes),
        Words(wire, test?.Clears),
        wire.Texts(test?.Points),
        Words(wire, test?.Caution),
        wire.Texts(test?.Rows),
        At(wire, test?.At)));
}
