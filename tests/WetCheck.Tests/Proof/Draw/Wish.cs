using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>A leaf of the rule that a room is drawn for, and how it should come out.</summary>
/// <param name="Limit">Of the version that the room is drawn for.</param>
/// <param name="Turn">Of its rule among those that the room is drawn for.</param>
internal sealed record Wish(Condition Leaf, PartKind Of, bool Wanted, Quantity? Limit, int Turn);

/// <summary>
/// What would bring some rules to speak: its condition and that of one of its versions met, its requirement met or not. Only wishes:
/// the room need not grant them.
/// </summary>
internal sealed class Wishes
{
    private readonly List<Wish> _all = [];
    private readonly Vocabulary _vocabulary;
    private readonly Dice _dice;
    private int _turn;

    private Wishes(RuleBook book, Dice dice) => (_vocabulary, _dice) = (book.Vocabulary, dice);

    /// <summary>Kinds of part that the rules read.</summary>
    public required IReadOnlySet<string> Kinds { get; init; }

    /// <param name="round">How often the first rule had its turn: its versions are taken in turn too.</param>
    public static Wishes For(IReadOnlyList<Rule> rules, int round, RuleBook book, Dice dice)
    {
        var wishes = new Wishes(book, dice) { Kinds = rules.SelectMany(rule => Studied.Of(book).Reads(rule).Kinds).ToHashSet() };
        foreach (var rule in rules)
        {
            var version =
                rule.Versions.Count == 0 ? null : wishes._turn == 0 ? rule.Versions[round % rule.Versions.Count]
                : dice.Pick(rule.Versions);
            var met = dice.Chance(0.4);
            wishes.Add(rule.When, rule.Part, wanted: true, null);
            wishes.Add(version?.When, rule.Part, wanted: true, null);
            wishes.Add((rule.Body as RuleBody.Require)?.Holds, rule.Part, met, version?.Limit);
            wishes.Add(version?.Require, rule.Part, met, version?.Limit);
            wishes._turn++;
        }

        return wishes;
    }

    /// <summary>Mostly those of one rule, the first that has any.</summary>
    public IReadOnlyList<Wish> Of(PartKind kind, ReadingKind reading)
    {
        var all = _all.Where(wish => PathOf(wish.Leaf) is { } path && path.Reading.Name == reading.Name
            && (path.Kind ?? wish.Of.Name) == kind.Name).ToList();
        return all.Count > 0 && _dice.Chance(0.9) ? all.FindAll(wish => wish.Turn == all.Min(one => one.Turn)) : all;
    }

    public IEnumerable<(T Leaf, bool Wanted)> OfType<T>()
        where T : Condition => _all.Where(wish => wish.Leaf is T).OrderBy(wish => wish.Turn).Select(wish => ((T)wish.Leaf, wish.Wanted));

    private static Model.Path? PathOf(Condition leaf) => leaf switch
    {
        Condition.Is test => test.Path,
        Condition.Compare test => test.Path,
        _ => null,
    };

    private void Add(Condition? condition, PartKind kind, bool wanted, Quantity? limit)
    {
        switch (condition)
        {
            case Condition.All all when wanted:
                Add(all.Of, kind, wanted, limit);
                break;
            case Condition.All all:
                // One that fails is enough, and shows most when the others hold.
                var fails = _dice.Pick(all.Of);
                Add(fails, kind, wanted: false, limit);
                Add([.. all.Of.Where(one => one != fails)], kind, wanted: true, limit);
                break;
            case Condition.AnyOf any when wanted:
                var holds = _dice.Pick(any.Of);
                Add(holds, kind, wanted: true, limit);
                Add([.. any.Of.Where(one => one != holds)], kind, wanted: false, limit);
                break;
            case Condition.AnyOf any:
                Add(any.Of, kind, wanted: false, limit);
                break;
            case Condition.Some some:
                Add(some.Meets, Leaves.Related(some.Of, kind, _vocabulary), wanted, limit);
                break;
            case Condition.Each each:
                Add(each.Meets, Leaves.Related(each.Of, kind, _vocabulary), wanted, limit);
                break;
            case { } leaf:
                _all.Add(new Wish(leaf, kind, wanted, limit, _turn));
                break;
        }
    }

    private void Add(IReadOnlyList<Condition> all, PartKind kind, bool wanted, Quantity? limit)
    {
        foreach (var one in all)
        {
            Add(one, kind, wanted, limit);
        }
    }
}
