using WetCheck.Model;

namespace WetCheck.Tests.Cli;

/// <summary>Names of files that would colour a terminal or move its cursor are shown with marks in their place.</summary>
public sealed class HostileNames
{
    [Theory]
    [InlineData("a\u001b[31mb.job.yaml")]
    [InlineData("a\u202eb.job.yaml")]
    [InlineData("a\u009b31mb.job.yaml")]
    public void A_file_of_any_name_is_named_as_plain_text(string name)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "such a name can't be given there");
        using var desk = new Desk((name, "job: A room\nmethod: liner under mortar\nunits: inches\nstage: flood test\ncurb:\n  hight: 3\n"));
        var ran = new[]
        {
            desk.Run("walk"), desk.Run("walk", name), desk.Run("punch", name, "--for", "helper"),
            desk.Run("walk", name, "--format", "json"),
        };
        foreach (var said in ran)
        {
            (said.Results + said.Messages).Where(c => VisibleText.IsUnseen(c)).Should().BeEmpty();
        }

        ran[0].Messages.Should().Contain("\ufffd");
    }
}
