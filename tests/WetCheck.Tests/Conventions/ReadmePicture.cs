using System.Text.RegularExpressions;
using WetCheck.Tests.Cli;

namespace WetCheck.Tests.Conventions;

/// <summary>The list that README.md shows is the one that its first command prints, with some of it left out.</summary>
public sealed partial class ReadmePicture
{
    private const string LeftOut = "...";

    [Fact]
    public void Its_lines_stand_in_the_list_in_this_order()
    {
        using var desk = new Desk();
        var printed = desk.Run("walk", "juniper").Results.Split('\n');
        var at = 0;
        foreach (var line in Picture().Match(Repository.Read("README.md")).Groups["text"].Value.Split('\n')
            .Where(line => line.Trim() is not ("" or LeftOut)))
        {
            var found = Array.IndexOf(printed, line, at);
            found.Should().BeGreaterThanOrEqualTo(at, $"the list has, from its line {at + 1} on: {line}");
            at = found + 1;
        }
    }

    [Fact]
    public void Its_first_command_ends_with_the_code_of_something_to_fix()
    {
        Repository.Read("README.md").Should()
            .Contain("dotnet run --project src/WetCheck.Cli -- walk docs/examples/juniper.job.yaml\ndotnet test\n");
        using var desk = new Desk();
        desk.Run("walk", Path.Combine(Repository.Root, "docs/examples/juniper.job.yaml")).Code.Should().Be(1);
    }

    [GeneratedRegex("```text\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Picture();
}
