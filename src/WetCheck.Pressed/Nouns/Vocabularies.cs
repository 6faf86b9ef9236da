using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static Vocabulary Vocabulary(Wire wire, Vocabulary? vocabulary) =>
        wire.Same(vocabulary, static (wire, vocabulary) => new Vocabulary(
        wire.List(vocabulary?.Kinds, PartKind),
        wire.List(vocabulary?.Datums, Datum),
        wire.List(vocabulary?.Tools, Tool),
        wire.List(vocabulary?.Places, Place),
        wire.List(vocabulary?.Disciplines, Discipline),
        wire.List(vocabulary?.Methods, Method),
        wire.List(vocabulary?.Steps, DatumStep)));

    private static PartKind PartKind(Wire wire, PartKind? kind) => wire.Same(kind, static (wire, kind) => new PartKind(
        wire.Text(kind?.Name),
        wire.Text(kind?.Stands),
        wire.Choice(kind?.Many ?? default),
        wire.MaybeText(kind?.Above),
        wire.List(kind?.Places, Place),
        wire.Yes(kind?.MayBeAbsent ?? false),
        wire.Yes(kind?.WholeWhenGiven ?? false),
        wire.MaybeText(kind?.Main),
        wire.List(kind?.Readings, ReadingKind),
        Words(wire, kind?.One),
        Words(wire, kind?.Several),
        Words(wire, kind?.AskPresence),
        Words(wire, kind?.AskWhole),
        Words(wire, kind?.Gloss),
        wire.Number(kind?.Order ?? 0),
        At(wire, kind?.At)));

    private static Place Place(Wire wire, Place? place) => wire.Same(place, static (wire, place) =>
        new Place(wire.Text(place?.Name), wire.Text(place?.Letters), Words(wire, place?.Say)));

    private static Datum Datum(Wire wire, Datum? datum) => wire.Same(datum, static (wire, datum) =>
        new Datum(wire.Text(datum?.Name), wire.Text(datum?.Of), Words(wire, datum?.Say)));

    private static DatumStep DatumStep(Wire wire, DatumStep? step) => wire.Same(step, static (wire, step) =>
        new DatumStep(wire.Text(step?.Datum), Quantity(wire, step?.Exactly ?? default), wire.Text(step?.Above)));
}
