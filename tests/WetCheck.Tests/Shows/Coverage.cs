using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Shows;

/// <summary>
/// Every published requirement that was collected, by its code, is held by something of the book or is left out with a
/// reason.
/// </summary>
public sealed partial class Coverage
{
    /// <summary>
    /// How many there are of each kind: size, curb, liner, drain, test, bed, backing, membrane, tile, joint, floor,
    /// fixture, access, demolition, metric.
    /// </summary>
    private static readonly (string Kind, int Count)[] Collected =
    [
        ("SG", 20), ("CB", 20), ("LN", 34), ("DR", 34), ("TS", 23), ("MB", 14), ("WB", 25), ("WM", 15),
        ("TL", 34), ("MJ", 17), ("FS", 26), ("FX", 38), ("AC", 20), ("DM", 21), ("MX", 54),
    ];

    private const int Conflicts = 45;

    private static HashSet<string> OfRules => [.. TheBook.Book.Rules.SelectMany(rule => rule.AllRows)];

    /// <summary>Weights and yields, causes of failure and tests before opening have sources too.</summary>
    private static IEnumerable<string> OfTheRest => TheBook.Book.Materials.Rows.Select(one => one.Row)
        .Concat(TheBook.Book.Causes.SelectMany(cause => cause.Rows))
        .Concat(TheBook.Book.Opening.Tests.SelectMany(test => test.Rows));

    [Fact]
    public void Every_requirement_is_held_or_left_out_with_a_reason() => Collected
        .SelectMany(kind => Enumerable.Range(1, kind.Count).Select(number => $"{kind.Kind}-{number:00}"))
        .Except(OfRules).Except(OfTheRest)
            .Except(LeftOut("docs/rules-left-out.md").Where(one => one.Reason.Length > 5).Select(one => one.Code))
        .Should().BeEmpty();

    [Fact]
    public void What_is_left_out_is_held_nowhere() =>
        LeftOut("docs/rules-left-out.md").Select(one => one.Code).Intersect(OfRules).Should().BeEmpty();

    [Fact]
    public void Each_is_left_out_once() => LeftOut("docs/rules-left-out.md").Select(one => one.Code).Should().OnlyHaveUniqueItems();

    [Fact]
    public void Every_conflict_is_told_and_a_number_it_names_is_a_rule()
    {
        var told = LeftOut("docs/conflicts.md").ToList();
        told.Select(one => one.Code).Should().Equal(Enumerable.Range(1, Conflicts).Select(number => $"C-{number:00}"));
        told.SelectMany(one => RuleNumber().Matches(one.Reason)
            .Select(match => int.Parse(match.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)))
            .Where(number => TheBook.Book.Rule(number) is null).Should().BeEmpty();
    }

    /// <summary>A rule that cites a conflict is named where the conflict is told.</summary>
    [Fact]
    public void A_rule_that_cites_a_conflict_is_named_there()
    {
        var told = LeftOut("docs/conflicts.md").ToDictionary(one => one.Code, one => one.Reason);
        TheBook.Book.Rules.SelectMany(rule => rule.AllRows.Select(row => (rule, row)))
            .Where(one => told.TryGetValue(one.row, out var reason) && !reason.Contains($"{one.rule.Number}", StringComparison.Ordinal))
            .Select(one => $"{one.row}: {one.rule.Number}").Should().BeEmpty();
    }

    private static IEnumerable<(string Code, string Reason)> LeftOut(string file) => Row().Matches(Repository.Read(file))
        .Select(match => (match.Groups["code"].Value, match.Groups["reason"].Value));

    [GeneratedRegex(@"^\| (?<code>[A-Z]{1,2}-\d\d) \|(?:[^|\n]*\|(?=[^|\n]*\|$))?(?<reason>[^|\n]*)\|$", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"(?<![\d/-])\b([1-8]\d\d)\b(?! (?:sq|%))")]
    private static partial Regex RuleNumber();
}
