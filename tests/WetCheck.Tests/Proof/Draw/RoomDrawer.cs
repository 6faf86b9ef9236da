using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// Draws one true state of a room from the vocabulary of a book, where it can as some rules of the book need it, the
/// first of them before the others.
/// </summary>
internal sealed class RoomDrawer(RuleBook book, Dice dice, IReadOnlyList<Rule> focus, int round)
{
    private readonly Vocabulary _vocabulary = book.Vocabulary;
    private readonly Wishes _wishes = Wishes.For(focus, round, book, dice);

    public TrueRoom Draw()
    {
        var method = Method();
        var codes = new CodeDrawer(book, _wishes, dice).Draw(out var metric);
        var numbers = new NumberDrawer(book, _wishes, metric, dice);
        var levels = new LevelDrawer(_vocabulary, numbers, dice).Draw();
        var parts = new PartDrawer(_vocabulary, _wishes, numbers, new FloorDrawer(numbers, metric, dice), dice).Draw(method, levels);
        return new TrueRoom(method, dice.Pick(method.Stops).Name, metric, codes, levels, parts);
    }

    private Method Method()
    {
        var (leaf, wanted) = _wishes.OfType<Condition.MethodIs>().FirstOrDefault();
        var kinds = Studied.Of(book).Reads(focus[0]).Kinds.ToHashSet();
        var fit = _vocabulary.Methods
            .Where(method => leaf is null || leaf.OneOf.Contains(method.Name) == wanted)
            .Where(method => !method.RulesOut.Any(kind => IsOn(focus[0].Part, kind)))
            .OrderBy(method => method.RulesOut.Count(kinds.Contains))
            .ToList();
        return fit.Count > 0 && dice.Chance(0.9) ? fit[dice.Chance(0.6) ? 0 : dice.Next(0, fit.Count - 1)] : dice.Pick(_vocabulary.Methods);
    }

    private bool IsOn(PartKind kind, string above) =>
        kind.Name == above || (kind.Above is { } next && IsOn(_vocabulary.Kind(next)!, above));
}
