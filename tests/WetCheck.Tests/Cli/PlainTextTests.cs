using WetCheck.Cli.Help;

namespace WetCheck.Tests.Cli;

/// <summary>A screen, a pipe and a dumb terminal get the same text: nothing that colours or moves a cursor is ever written.</summary>
public sealed class PlainTextTests
{
    private const string Escape = "\\e[31m";

    public static TheoryData<string> Lines =>
        [.. Examples.ByCommand.Values.SelectMany(lines => lines).Select(line => line.Split("  ")[0])
        .Append("wetcheck wlak").Append("wetcheck -h").Append("wetcheck --version").Distinct()];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Not_by_any_command(string line)
    {
        using var desk = new Desk();
        var ran = desk.Run([.. line.Replace("\"", "", StringComparison.Ordinal).Split(' ').Skip(1)]);
        (ran.Results + ran.Messages).Should().NotBeEmpty().And.NotContain("\u001B").And.NotContain("\u009B");
    }

    [Theory]
    [InlineData("walk elm")]
    [InlineData("walk elm --all")]
    [InlineData("walk elm --format json")]
    [InlineData("punch elm")]
    [InlineData("punch elm --format html")]
    [InlineData("look elm")]
    [InlineData("walk \u001B[31melm")]
    public void Not_even_where_a_job_brings_it_along(string line)
    {
        using var desk =
            new Desk(("elm.job.yaml",
            $"job: \"elm {Escape}\"\nmethod: \"{Escape}\"\nreadings by: \"{Escape}\"\nnotes: \"{Escape}\"\ncurb:\n  "
            + $"height: \"4 {Escape}\"\n"));
        var ran = desk.Run(line.Split(' '));
        (ran.Results + ran.Messages).Should().NotBeEmpty().And.NotContain("\u001B");
    }
}
