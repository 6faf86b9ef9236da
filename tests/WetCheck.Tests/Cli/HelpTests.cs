using WetCheck.Cli;
using WetCheck.Cli.Help;

namespace WetCheck.Tests.Cli;

public sealed class HelpTests
{
    public static TheoryData<string> Commands =>
        ["", "walk", "why", "look", "punch", "pan", "rules", "rules prove", "rules new", "job", "job new",
        "job sample", "job schema"];

    public static TheoryData<string> Lines => [.. Examples.ByCommand.Values.SelectMany(lines => lines)];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Every_command_has_help_on_standard_output(string command)
    {
        using var desk = new Desk();
        var ran = desk.Run([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "-h"]);
        ran.Should().Match<Ran>(r => r.Code == 0 && r.Messages.Length == 0);
        ran.Results.Split('\n').Should().OnlyContain(line => line.TrimEnd().Length <= 86);
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void Every_example_of_the_help_runs(string line)
    {
        using var desk = line.Contains("rules new", StringComparison.Ordinal) ? Desk.WithBook() : new Desk();
        var ran = desk.Run(Words(line));
        ran.Code.Should().BeOneOf(0, 1, 3);
        ran.Results.Should().NotBeEmpty();
        ran.Messages.Should().BeEmpty();
    }

    [Fact]
    public void Every_command_has_examples()
    {
        var root = CommandLine.Root(Terminal.Real());
        root.Subcommands.Concat(root.Subcommands.SelectMany(command => command.Subcommands)).Select(command => command.Name)
            .Should().BeSubsetOf(Examples.ByCommand.Keys);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-h")]
    public void Three_lines_come_first_and_each_can_be_typed(string line)
    {
        using var desk = new Desk();
        var lines = desk.Run(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Results.Split('\n').Take(3)
            .Select(one => one.Trim().Split(":  ")).ToList();
        lines.Select(one => one[0]).Should().Equal("Start", "Check", "Print");
        foreach (var typed in lines.Select(one => one[1].Replace("NAME", "elm", StringComparison.Ordinal)))
        {
            desk.Run([.. typed.Split(' ').Skip(1)]).Should().Match<Ran>(ran => ran.Code == 3 && ran.Messages.Length == 0, typed);
        }

        File.Exists(desk.PathOf("elm.html")).Should().BeTrue();
    }

    [Fact]
    public void Alone_it_shows_its_help()
    {
        using var desk = new Desk();
        desk.Run().Results.Should().Contain("walk").And.Contain("Examples:");
    }

    /// <summary>As a shell takes them; what stands after two spaces is said of the line, not part of it.</summary>
    private static string[] Words(string line) =>
        [.. line.Split("  ")[0].Split('"')
            .SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Skip(1)];
}
