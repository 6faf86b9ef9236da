using WetCheck.Model;

namespace WetCheck.Pressed;

internal static partial class Carry
{
    public static RuleBook RuleBook(Wire wire, RuleBook? book) => wire.Same(book, static (wire, book) => new RuleBook(
        wire.Text(book?.Name),
        wire.Text(book?.Date),
        Vocabulary(wire, book?.Vocabulary),
        wire.List(book?.Rules, Rule),
        wire.Map(book?.Sources, Text, static (wire, entries) => wire.List(entries, SourceEntry)),
        wire.List(book?.RetiredNumbers, static (wire, number) => wire.Number(number)),
        wire.Map(book?.Words, Text, static (wire, words) => wire.Later(words, Text)),
        wire.Later(book?.Lists, Text))
    {
        Local = wire.List(book?.Local, LocalChanges),
        Materials = Materials(wire, book?.Materials),
        Causes = wire.List(book?.Causes, Cause),
        Opening = Opening(wire, book?.Opening),
    });

    public static IReadOnlyList<RuleCase> RuleCases(Wire wire, IReadOnlyList<RuleCase>? cases) => wire.List(cases, RuleCase);

    private static SourceEntry SourceEntry(Wire wire, SourceEntry? entry) => wire.Same(entry, static (wire, entry) => new SourceEntry(
        wire.Text(entry?.Row),
        wire.Text(entry?.Publisher),
        wire.Text(entry?.Document),
        wire.Text(entry?.Section),
        wire.Text(entry?.Editions),
        wire.MaybeText(entry?.Of),
        wire.Choice(entry?.Status ?? default))
    {
        GivenIn = wire.Text(entry?.GivenIn),
    });

    private static LocalChanges LocalChanges(Wire wire, LocalChanges? local) => wire.Same(local, static (wire, local) =>
        new LocalChanges(wire.Text(local?.Name), wire.Text(local?.Date), wire.Text(local?.File), wire.Number(local?.Count ?? 0)));

    private static RuleCase RuleCase(Wire wire, RuleCase? one) => wire.Same(one, static (wire, one) => new RuleCase(
        wire.Text(one?.Rule),
        wire.Text(one?.Name),
        wire.Text(one?.Job),
        wire.Map(one?.Expect, Text, Text),
        wire.Texts(one?.Asks),
        At(wire, one?.At)));
}
