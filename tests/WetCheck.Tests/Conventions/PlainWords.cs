using System.Text.RegularExpressions;

namespace WetCheck.Tests.Conventions;

/// <summary>Words that people are not met with: scolding ones, software ones, and those with two meanings on a job site.</summary>
public sealed partial class PlainWords
{
    private static readonly IReadOnlyList<string> Texts =
    [
        .. Repository.In("rules/", ".yaml").Where(file => !file.EndsWith(".cases.yaml", StringComparison.Ordinal)),
        .. Repository.Files.Where(file => file.StartsWith("rules/lists/", StringComparison.Ordinal)),
    ];

    [Fact]
    public void No_text_of_the_rule_book_scolds_or_speaks_software() =>
        Repository.LinesWhere(Texts, line => Scolding().IsMatch(line)).Should().BeEmpty();

    /// <summary>
    /// But for the press, which speaks to a build, in a build's form, and for the words that are kept off an owner's
    /// page.
    /// </summary>
    [Fact]
    public void No_message_of_the_program_scolds_or_speaks_software() => Repository.LinesWhere(
        Repository.In("src/", ".cs")
            .Where(file => !file.StartsWith("src/WetCheck.Press/", StringComparison.Ordinal)
            && !file.EndsWith("/OwnerPlainness.cs", StringComparison.Ordinal)),
        line => Quoted().Matches(line).Any(text => Scolding().IsMatch(text.Value))).Should().BeEmpty();

    [Fact]
    public void Right_is_a_wall_never_a_verdict() =>
        Repository.LinesWhere(Texts, line => RightAlone().IsMatch(Walls().Replace(line, ""))).Should().BeEmpty();

    [Fact]
    public void Spanish_keeps_off_words_with_two_meanings() =>
        Repository.LinesWhere(Texts, line => TwoMeanings().IsMatch(line)).Should()
            .BeEmpty("say pare, altura; antes de cubrir, ya no se ve, obstruido");

    /// <summary>What is planned is on paper; what is printed is printed, what is agreed is in writing.</summary>
    [Fact]
    public void On_paper_is_a_plan() =>
        Repository.LinesWhere(Texts,
            line => line.Contains("on paper", StringComparison.OrdinalIgnoreCase)
            && (!line.Contains('{', StringComparison.Ordinal) || Printed().IsMatch(line))
            && !IsWordOfResult().IsMatch(line))
            .Should().BeEmpty();

    [Fact]
    public void No_slot_is_unknown() =>
        Repository.LinesWhere(Rules.Files, line => Slot().Matches(line).Any(slot => !Slots.Contains(slot.Value))).Should().BeEmpty();

    private static readonly string[] Slots = ["{found}", "{limit}", "{short}", "{count}", "{place}", "{part}"];

    [GeneratedRegex(@"\b(invalid|please|sorry|errors?|covered up|submit(ted)?|issues?|violations?|you did|you failed|non-?compliant)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Scolding();

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Quoted();

    /// <summary>A side of the room: a place name, a key, one of a list of sides. Or a side of the paper, in a style sheet.</summary>
    [GeneratedRegex(@"\bright([ -](wall|side|sides|back|jamb|corner|hand))|\bright(?=\s*[:,\]}(])|(left|back|,|or|and|the)\s+right\b|\[right\b|text-align:\s*right|[a-z]-right", RegexOptions.IgnoreCase)]
    private static partial Regex Walls();

    [GeneratedRegex(@"\bright\b", RegexOptions.IgnoreCase)]
    private static partial Regex RightAlone();

    /// <summary><em>Plano</em> is a drawing, and only in "en el plano"; a floor is <em>a nivel</em>.</summary>
    [GeneratedRegex(@"\balto\b|\btapad[oa]s?\b|\bse tapan?\b|\btape(?= (el|la|los|las)\b)|(?<!\ben el )\bplan[oa]s?\b(?! \d|-)", RegexOptions.IgnoreCase)]
    private static partial Regex TwoMeanings();

    [GeneratedRegex(@"\b(print|page|sheet|written|signed)", RegexOptions.IgnoreCase)]
    private static partial Regex Printed();

    /// <summary>The marks themselves: <c>on-paper: on paper</c>; and what a comment says of them.</summary>
    [GeneratedRegex(@"^\s*((short-|good-|all-)?on-paper: |#)|\bplan\b", RegexOptions.IgnoreCase)]
    private static partial Regex IsWordOfResult();

    [GeneratedRegex(@"\{[a-z]+\}")]
    private static partial Regex Slot();
}
