using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    private static Discipline Discipline(Wire wire, Discipline? discipline) =>
        wire.Same(discipline, static (wire, discipline) => new Discipline(
        wire.Text(discipline?.Name),
        Words(wire, discipline?.Say),
        Words(wire, discipline?.Ask),
        wire.List(discipline?.Families, CodeFamily)));

    private static CodeFamily CodeFamily(Wire wire, CodeFamily? family) => wire.Same(family, static (wire, family) => new CodeFamily(
        wire.Text(family?.Name),
        Words(wire, family?.Say),
        wire.Yes(family?.TriedInInches ?? false),
        wire.Yes(family?.TriedInMillimetres ?? false)));

    private static CodeRange CodeRange(Wire wire, CodeRange? range) => wire.Same(range, static (wire, range) => new CodeRange(
        wire.Text(range?.Family),
        wire.MaybeNumber(range?.From),
        wire.MaybeNumber(range?.To)));
}
