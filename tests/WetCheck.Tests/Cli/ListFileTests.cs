namespace WetCheck.Tests.Cli;

public sealed class ListFileTests
{
    [Theory]
    [InlineData("list.html", "<!DOCTYPE html>")]
    [InlineData("list.md", "#")]
    [InlineData("list.json", "{")]
    [InlineData("list.txt", "Juniper")]
    public void The_ending_of_the_file_says_how_it_is_written(string file, string starts)
    {
        using var desk = new Desk();
        var ran = desk.Run("punch", "juniper", "-o", file);
        ran.Code.Should().Be(1);
        ran.Results.Should().Contain(file);
        File.ReadAllText(desk.PathOf(file)).Should().StartWithEquivalentOf(starts);
    }

    [Fact]
    public void An_ending_that_says_nothing_is_asked()
    {
        using var desk = new Desk();
        var ran = desk.Run("punch", "juniper", "-o", "list.doc");
        ran.Code.Should().Be(2);
        ran.Messages.Should().Contain(".html");
    }

    [Fact]
    public void Without_a_file_it_is_the_message()
    {
        using var desk = new Desk();
        desk.Run("punch", "juniper").Results.Should().StartWith("Juniper Court");
    }
}
