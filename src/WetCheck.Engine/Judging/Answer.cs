using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>What a condition comes to.</summary>
/// <param name="Value">Null: it fell away, because what it speaks of is not on this job.</param>
/// <param name="Hangs">Of an Unknown: the facts that would settle it.</param>
/// <param name="Tests">The comparisons made, the deciding one first.</param>
internal sealed record Answer(Tri? Value, IReadOnlyList<Hang> Hangs, IReadOnlyList<Measured> Tests)
{
    public static readonly Answer Fell = new(null, [], []);
    public static readonly Answer Yes = new(Tri.Yes, [], []);
    public static readonly Answer No = new(Tri.No, [], []);

    public static Answer Unknown(params IReadOnlyList<Hang> hangs) => new(Tri.Unknown, hangs, []);

    public static Answer Of(bool yes) => yes ? Yes : No;

    /// <summary>All-of: the least of those that did not fall away.</summary>
    public static Answer Least(IEnumerable<Answer> answers) => Fold(answers, (a, b) => a < b ? a : b);

    /// <summary>Any-of: the greatest.</summary>
    public static Answer Greatest(IEnumerable<Answer> answers) => Fold(answers, (a, b) => a > b ? a : b);

    private static Answer Fold(IEnumerable<Answer> answers, Func<Tri, Tri, Tri> pick)
    {
        var stood = answers.Where(answer => answer.Value is not null).ToList();
        if (stood.Count <= 1)
        {
            return stood.Count == 0 ? Fell : stood[0];
        }

        var value = stood.Select(answer => answer.Value!.Value).Aggregate(pick);
        if (value != Tri.Unknown && stood.TrueForAll(answer => answer.Tests.Count == 0))
        {
            return Of(value == Tri.Yes);
        }

        var hangs = value == Tri.Unknown
            ? stood.Where(answer => answer.Value == Tri.Unknown).SelectMany(answer => answer.Hangs).Distinct() : [];
        return new Answer(value, [.. hangs], [.. stood.OrderBy(answer => answer.Value != value).SelectMany(answer => answer.Tests)]);
    }
}
