using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Every quantity of the rule book shows: moved by its smallest step, up or down, some case of its rule comes out otherwise.</summary>
public sealed class NoLimitIsIdle
{
    private static readonly IReadOnlyList<Rule> Concluding = [.. TheBook.Book.Rules.Where(rule => rule.Body is RuleBody.Conclude)];
    private static readonly ILookup<string, RuleCase> Cases = TheBook.Cases.ToLookup(one => one.Rule, StringComparer.Ordinal);

    [Fact]
    public void Moved_up_it_shows() => string.Join("\n", Idle(limit => limit.Up)).Should().BeEmpty();

    [Fact]
    public void Moved_down_it_shows() => string.Join("\n", Idle(limit => limit.Down)).Should().BeEmpty();

    private static List<string> Idle(Func<MovedLimit, Rule> moved) => [.. TheBook.Book.Rules.SelectMany(MovedLimit.Of)
        .Where(limit => !Shows(moved(limit)))
        .Select(limit => $"{limit.At}: {limit.Number.Typed.FromBase(limit.Number.Value)} {limit.Number.Typed.Key}")];

    /// <summary>Some case misses what it expects.</summary>
    private static bool Shows(Rule moved)
    {
        var book = new ReadyBook(TheBook.Book with { Rules = [moved, .. Concluding.Where(rule => rule.Id != moved.Id)] });
        return Cases[moved.Id].Any(one => !WetCheck.Proof.Of(one, book).Holds);
    }
}
