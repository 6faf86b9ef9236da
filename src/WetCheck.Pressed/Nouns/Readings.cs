using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static ReadingKind ReadingKind(Wire wire, ReadingKind? kind) => wire.Same(kind, static (wire, kind) => new ReadingKind(
        wire.Text(kind?.Name),
        wire.Choice(kind?.Is ?? default),
        wire.MaybeAmount(kind?.Measure, static (wire, measure) => wire.Choice(measure)),
        wire.List(kind?.Choices, Choice),
        wire.MaybeText(kind?.From),
        wire.MaybeText(kind?.Lifts),
        wire.MaybeAmount(kind?.Least, Quantity),
        wire.MaybeText(kind?.Layer),
        wire.Map(kind?.LayerAt, Text, Text),
        wire.Yes(kind?.Derived ?? false),
        wire.Maybe(kind?.Tool, Tool),
        wire.Choice(kind?.Effort ?? default),
        wire.MaybeAmount(kind?.Believable, static (wire, ends) => (Quantity(wire, ends.Least), Quantity(wire, ends.Most))),
        Words(wire, kind?.Ask),
        Words(wire, kind?.How),
        Words(wire, kind?.Gloss),
        Words(wire, kind?.Proof),
        wire.Text(kind?.Example),
        At(wire, kind?.At))
    {
        Brief = Words(wire, kind?.Brief),
        AskedBy = wire.MaybeText(kind?.AskedBy),
    });

    private static Choice Choice(Wire wire, Choice? choice) => wire.Same(choice, static (wire, choice) =>
        new Choice(wire.Text(choice?.Key), Words(wire, choice?.Say)));

    private static Tool Tool(Wire wire, Tool? tool) => wire.Same(tool, static (wire, tool) => new Tool(
        wire.Text(tool?.Name),
        Words(wire, tool?.Say),
        Marks(wire, tool?.Marks),
        wire.Maybe(tool?.Metric, Marks)));
}
