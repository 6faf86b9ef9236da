namespace WetCheck.Tests.Cli;

/// <summary>
/// Pipes, devices, links and streams that are closed: a message and a code, never a trace, never a wait.
/// </summary>
public sealed class SpecialFiles
{
    [Theory]
    [InlineData("mkfifo elm.job.yaml; wetcheck walk elm", 4, "elm.job.yaml is no plain file")]
    [InlineData("mkfifo juniper.log.jsonl; wetcheck walk juniper", 4, "juniper.log.jsonl is no plain file")]
    [InlineData("mkfifo juniper.levels.csv; wetcheck walk juniper", 4, "juniper.levels.csv is no plain file")]
    [InlineData("cp juniper.job.yaml b.job.yaml; echo 'local: b.yaml' >> b.job.yaml; mkfifo b.yaml; wetcheck walk b",
        4, "b.yaml is no plain file")]
    [InlineData("mkdir book; mkfifo book/book.yaml; wetcheck walk juniper --rules book", 4, "is no plain file")]
    [InlineData("mkfifo j.md; wetcheck punch juniper -o j.md --force", 5, "j.md is no plain file")]
    [InlineData("wetcheck punch juniper -o /dev/null --format md --force", 5, "/dev/null is no plain file")]
    [InlineData("ln -s /dev/zero elm.job.yaml; wetcheck walk elm", 4, "elm.job.yaml is no plain file")]
    [InlineData("wetcheck walk /dev/zero", 4, "/dev/zero is no plain file")]
    [InlineData("ln -s /dev/zero juniper.log.jsonl; wetcheck walk juniper", 4, "juniper.log.jsonl")]
    [InlineData("truncate -s 3G juniper.log.jsonl; wetcheck walk juniper", 4, "juniper.log.jsonl is larger than 4 MB")]
    [InlineData("truncate -s 3G juniper.job.yaml; wetcheck walk juniper", 4, "juniper.job.yaml is larger than 4 MB")]
    [InlineData("ln -s gone juniper2.job.yaml; wetcheck walk juniper2", 4, "juniper2.job.yaml can't be read")]
    [InlineData("wetcheck walk juniper >&-", 5, "What was to be shown can't be written")]
    [InlineData("wetcheck walk juniper >/dev/full", 5, "What was to be shown can't be written")]
    [InlineData("wetcheck pan juniper --format json >/dev/full", 5, "What was to be shown can't be written")]
    [InlineData("wetcheck -h >/dev/full", 5, "What was to be shown can't be written")]
    [InlineData("mkdir gone; cd gone; rmdir ../gone; wetcheck walk juniper", 4, "There is no file juniper.job.yaml")]
    public void End_in_a_message(string script, int code, string message)
    {
        using var desk = new Desk();
        var ran = Shell.Run(desk, script);
        ran.Messages.Should().Contain(message).And.NotContain("   at ");
        ran.Code.Should().Be(code);
        ran.Results.Should().BeEmpty();
    }

    [Theory]
    [InlineData("wetcheck walk none 2>&-", 4)]
    [InlineData("wetcheck walk none 2>/dev/full", 4)]
    [InlineData("wetcheck walk juniper >&- 2>&-", 5)]
    public void With_nowhere_to_say_it_the_code_says_it(string script, int code)
    {
        using var desk = new Desk();
        Shell.Run(desk, script).Code.Should().Be(code);
    }

    [Theory]
    [InlineData("wetcheck look juniper <&-")]
    [InlineData("wetcheck look juniper </dev/null")]
    [InlineData("wetcheck look juniper < .")]
    public void Where_nothing_can_be_typed_it_asks_once(string script)
    {
        using var desk = new Desk();
        var ran = Shell.Run(desk, script);
        ran.Messages.Should().BeEmpty();
        ran.Code.Should().Be(1);
        ran.Results.Should().Contain("610");
    }

    [Fact]
    public void An_answer_that_was_kept_is_told_where_the_list_cannot_be_shown()
    {
        using var desk = new Desk();
        var ran = Shell.Run(desk, "wetcheck look juniper 208 open >/dev/full");
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain("drain.weeps: open").And.Contain("can't be written");
        File.ReadAllText(desk.PathOf("juniper.log.jsonl")).Should().Contain("drain.weeps");
    }

    [Fact]
    public void A_log_that_is_a_link_to_another_folder_is_neither_read_nor_written()
    {
        using var desk = new Desk();
        using var elsewhere = new Desk();
        elsewhere.Write("kept.txt", "");
        File.CreateSymbolicLink(desk.PathOf("juniper.log.jsonl"), elsewhere.PathOf("kept.txt"));
        desk.Run("walk", "juniper").Messages.Should().Contain("juniper.log.jsonl is a link to another folder.");
        desk.Run("look", "juniper", "208", "open").Code.Should().Be(4);
        File.ReadAllText(elsewhere.PathOf("kept.txt")).Should().BeEmpty();
    }

    [Theory]
    [InlineData("../town.yaml")]
    [InlineData("sub/../../town.yaml")]
    [InlineData("/etc/hostname")]
    [InlineData("'\\\\server\\share\\town.yaml'")]
    [InlineData("'C:\\town.yaml'")]
    [InlineData("'..\\town.yaml'")]
    public void Local_changes_stay_in_the_folder_of_the_job(string local)
    {
        using var desk = new Desk(("maple.job.yaml", $"method: liner under mortar\nunits: inches\nlocal: {local}\n"));
        var ran = desk.Run("walk", "maple");
        ran.Code.Should().Be(4);
        ran.Messages.Should().Contain("is not in the folder of this job file");
    }
}
