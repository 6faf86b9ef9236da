using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static Method Method(Wire wire, Method? method) => wire.Same(method, static (wire, method) => new Method(
        wire.Text(method?.Name),
        Words(wire, method?.Say),
        wire.List(method?.Stops, Stop),
        wire.List(method?.Layers, Layer),
        wire.Texts(method?.Has),
        wire.Texts(method?.RulesOut),
        wire.Texts(method?.Asks),
        wire.Texts(method?.AsksAfter),
        At(wire, method?.At)));

    private static Stop Stop(Wire wire, Stop? stop) => wire.Same(stop, static (wire, stop) =>
        new Stop(wire.Text(stop?.Name), Words(wire, stop?.Say)));

    private static Layer Layer(Wire wire, Layer? layer) => wire.Same(layer, static (wire, layer) => new Layer(
        wire.Text(layer?.Name),
        Words(wire, layer?.Say),
        wire.Text(layer?.Made),
        wire.MaybeText(layer?.Hidden),
        Words(wire, layer?.Cover)));
}
