using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>
/// A job by its number: the same room, told the same, on every run. Each is drawn for some rules of the book, the first of them in
/// turn, so that each rule has jobs that bring it to speak.
/// </summary>
internal sealed record Drawn(int Number, TrueRoom Room, Job Job)
{
    private const int RulesOfAJob = 4;

    public static Drawn Of(int number, RuleBook book)
    {
        var dice = new Dice(number);
        var rules = book.Rules.Where(rule => rule.Body is RuleBody.Require || dice.Chance(0.2)).ToList();
        return For(rules[number % rules.Count], number / rules.Count, rules, number, book, dice);
    }

    /// <summary>A job for one rule, by the rule's turn.</summary>
    public static Drawn For(Rule rule, int turn, RuleBook book)
    {
        var number = (rule.Number * 1000) + turn;
        return For(rule, turn, book.Rules, number, book, new Dice(number));
    }

    private static Drawn For(Rule first, int turn, IReadOnlyList<Rule> rules, int number, RuleBook book, Dice dice)
    {
        // A part that may be absent is there less often: its rules are picked three times as often.
        var picks = rules.SelectMany(rule => Enumerable.Repeat(rule, rule.Part is { MayBeAbsent: true, Many: Many.One } ? 3 : 1)).ToList();
        var focus = Enumerable.Range(0, RulesOfAJob).Select(pick => pick == 0 ? first : dice.Pick(picks)).ToList();
        var room = new RoomDrawer(book, dice, focus, round: turn).Draw();
        return new Drawn(number, room, new Teller(book.Vocabulary, room, HowMuch(focus, book, dice), dice).Job());
    }

    /// <summary>From 15 to 100 %, one in five all of it; most jobs with what their rules read told with more care.</summary>
    private static Telling HowMuch(IReadOnlyList<Rule> focus, RuleBook book, Dice dice) => new(
        dice.Chance(0.2) ? 1 : 0.15 + (0.85 * dice.Share()),
        Focus: dice.Chance(0.7) ? focus.SelectMany(rule => Studied.Of(book).Reads(rule).Kinds).ToHashSet() : null);
}
