namespace WetCheck.Tests.Cli;

/// <summary>A disk that takes no more: what was kept stays whole, and what was not is given back.</summary>
public sealed class FullDiskTests
{
    [Fact]
    public void Half_an_answer_is_taken_off_again_and_the_answer_is_given_back()
    {
        using var desk = new Desk();
        var log = desk.PathOf("juniper.log.jsonl");
        desk.Run("look", "juniper", "214-D", "3").Code.Should().NotBe(5);
        var whole = File.ReadAllText(log);

        // So many lines of it that the next one would pass 1024 bytes, and half of it still finds room.
        var full = string.Concat(Enumerable.Range(0, 980 / whole.Length)
            .Select(i => whole.Replace("16:05:00", $"16:05:{i:00}", StringComparison.Ordinal)));
        File.WriteAllText(log, full);
        var (code, said, messages) = Limited(desk, "look juniper 208 open");
        code.Should().Be(5);
        said.Should().NotContain("Kept");
        messages.Should().Contain("is the disk full").And.Contain("Not kept:  drain.weeps: open");
        File.ReadAllText(log).Should().Be(full);
    }

    /// <summary>A link to a folder that is gone can be written by nobody, not even by who may do anything.</summary>
    [Fact]
    public void Where_the_log_cannot_be_opened_the_answer_is_given_back()
    {
        using var desk = new Desk();
        File.CreateSymbolicLink(desk.PathOf("juniper.log.jsonl"), desk.PathOf("gone/juniper.log.jsonl"));
        var ran = desk.Run("look", "juniper", "208", "open");
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain("Not kept:  drain.weeps: open");
    }

    [Fact]
    public void A_good_page_outlives_the_disk_that_takes_no_new_one()
    {
        using var desk = new Desk();
        desk.Run("punch", "juniper", "-o", "p.md").Code.Should().Be(1);
        var whole = File.ReadAllText(desk.PathOf("p.md"));
        var ran = Limited(desk, "punch juniper -o p.md");
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain("p.md can't be written. The disk is full.");
        File.ReadAllText(desk.PathOf("p.md")).Should().Be(whole);
        Names(desk).Should().BeEquivalentTo(["juniper.job.yaml", "p.md"], "nothing half written is left about");
    }

    [Theory]
    [InlineData("job new elm", "elm.job.yaml")]
    [InlineData("job sample", "juniper.job.yaml")]
    public void A_job_that_finds_no_room_leaves_none_behind(string words, string file)
    {
        using var desk = new Desk();
        File.Delete(desk.PathOf("juniper.job.yaml"));
        var ran = Limited(desk, words);
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain($"{file} can't be written. The disk is full.").And.NotContain("is there already");
        Names(desk).Should().BeEmpty();
    }

    private static string[] Names(Desk desk) => [.. Directory.GetFileSystemEntries(desk.Folder).Select(path => Path.GetFileName(path)!)];

    /// <summary>No file may grow past 1024 bytes; writing on fails as it does on a full disk.</summary>
    private static Ran Limited(Desk desk, string words) => Shell.Run(desk, $"trap '' XFSZ; ulimit -f 1; wetcheck {words}");
}
