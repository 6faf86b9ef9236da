using System.Text.RegularExpressions;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli;

/// <summary><c>docs/writing-rules.md</c>, followed word for word in a copy of the rule book.</summary>
public sealed partial class WritingRules
{
    private static readonly string Page = Repository.Read("docs/writing-rules.md");

    private static string Piece(string sort) => Fence.All.Single(fence => fence.File == "docs/writing-rules.md" && fence.Sort == sort).Text;

    [Fact]
    public void The_page_makes_a_rule_that_proves()
    {
        using var desk = Desk.WithBook();
        var typed = Typed().Matches(Page).Select(match => match.Groups[1].Value).ToList();
        typed.Should().HaveCount(2);

        desk.Run(typed[0].Split(' ')).Results.Should().Contain("number 901");
        File.ReadAllText(desk.PathOf("rules/local/curb-width.yaml")).Should().Contain("rule: local/curb-width\nnumber: 901\n");
        desk.Run(typed[1].Split(' ')).Messages.Should()
            .Contain("rules/local/curb-width.yaml:1:1\n    rule: local/curb-width\n    ^ \"part\" is missing.",
            "what is blank is told");

        File.AppendAllText(desk.PathOf("rules/sources.yaml"), "\n" + Piece("sources"));
        desk.Write("rules/local/curb-width.yaml", Piece("rule"));
        desk.Write("rules/local/curb-width.cases.yaml", Piece("cases"));
        desk.Run(typed[1].Split(' ')).Should().Match<Ran>(ran => ran.Code == 0 && ran.Messages.Length == 0)
            .And.Match<Ran>(ran => ran.Results.Contains("5 cases hold, 0 do not."));
    }

    [Fact]
    public void What_is_wanting_in_it_is_told_at_its_place()
    {
        using var desk = Desk.WithBook();
        File.AppendAllText(desk.PathOf("rules/sources.yaml"), "\n" + Piece("sources"));
        Directory.CreateDirectory(desk.PathOf("rules/local"));
        desk.Write("rules/local/curb-width.yaml", Piece("rule").Split("es:\n")[0]);
        desk.Write("rules/local/curb-width.cases.yaml",
            Piece("cases").Replace("3-63/64", "3-1/2", StringComparison.Ordinal)
            .Replace("read-again", "correction", StringComparison.Ordinal));
        var ran = desk.Run("rules", "prove", "local/curb-width", "--rules", "rules");
        ran.Code.Should().Be(1);
        ran.Results.ReplaceLineEndings("\n").Should().Be("""
            rules/local/curb-width.yaml:1:1
                there is no es: write its words in that language too
            rules/local/curb-width.yaml:4:21
                4 in may be less by its smallest step and no case notices: write a case one step from the limit
            5 cases hold, 0 do not. 2 wanting in the rules.

            """);
    }

    [Theory]
    [InlineData("rules new curb-width", "by its chapter and its name")]
    [InlineData("rules new lner/low", "Nearest: liner.")]
    [InlineData("rules new liner/turn-up", "is there already")]
    public void What_can_not_be_made_is_told(string line, string told)
    {
        using var desk = Desk.WithBook();
        var ran = desk.Run(line.Split(' '));
        ran.Code.Should().BeOneOf(2, 4, 5);
        ran.Messages.Should().Contain(told);
        File.ReadAllText(desk.PathOf("rules/liner/turn-up.yaml")).Should().Be(Repository.Read("rules/liner/turn-up.yaml"));
    }

    [GeneratedRegex("^wetcheck (.+)$", RegexOptions.Multiline)]
    private static partial Regex Typed();
}
