namespace WetCheck.Tests.Cli;

/// <summary>JOB is a path, a name, a folder, or nothing.</summary>
public sealed class JobFileTests
{
    [Theory]
    [InlineData("walk")]
    [InlineData("walk juniper")]
    [InlineData("walk juniper.job.yaml")]
    [InlineData("walk ./juniper.job.yaml")]
    [InlineData("walk .")]
    public void The_one_job_of_the_folder_is_found(string line)
    {
        using var desk = new Desk();
        desk.Run(line.Split(' ')).Results.Should().Contain("Juniper Court");
    }

    [Fact]
    public void Of_several_jobs_the_program_says_what_to_type()
    {
        using var desk = new Desk(("oak hill.job.yaml", "job: Oak Hill"));
        var ran = desk.Run("walk");
        ran.Code.Should().Be(2);
        ran.Messages.Should().Contain("There are 2 job files here.").And.Contain("wetcheck walk juniper")
            .And.Contain("wetcheck walk \"oak hill\"");
    }

    [Fact]
    public void Of_none_too()
    {
        using var desk = new Desk();
        File.Delete(desk.PathOf("juniper.job.yaml"));
        var ran = desk.Run("walk");
        ran.Code.Should().Be(2);
        ran.Messages.Should().Contain("There is no job file here.");
    }

    [Fact]
    public void Trying_another_stage_or_value_leaves_the_file_as_it_is()
    {
        using var desk = new Desk();
        var before = File.ReadAllText(desk.PathOf("juniper.job.yaml"));
        var plain = desk.Run("walk", "juniper", "--all").Results;
        desk.Run("walk", "juniper", "--all", "--stage", "before bed").Results.Should().NotBe(plain);
        desk.Run("walk", "juniper", "--all", "--if", "liner.right: 5", "--if", "drain.weeps: open").Results.Should().NotBe(plain);
        File.ReadAllText(desk.PathOf("juniper.job.yaml")).Should().Be(before);
    }

    [Fact]
    public void A_word_processors_sixteen_bit_file_is_read_too()
    {
        using var desk = new Desk();
        File.WriteAllText(desk.PathOf("elm.job.yaml"), "job: Elm Street\n", System.Text.Encoding.Unicode);
        desk.Run("walk", "elm").Results.Should().Contain("Elm Street");
    }

    [Fact]
    public void Bytes_that_are_no_text_are_placed()
    {
        using var desk = new Desk();
        File.WriteAllBytes(desk.PathOf("elm.job.yaml"), [.. "job: Elm\nnotes: "u8, 0xE9, .. "t\u00E9\n"u8]);
        var ran = desk.Run("walk", "elm");
        ran.Code.Should().Be(4);
        ran.Messages.Should().StartWith("elm.job.yaml:2").And.Contain("UTF-8");
    }

    [Fact]
    public void Any_bytes_end_in_a_message_or_a_result()
    {
        var chance = new Random(20261125);
        using var desk = new Desk();
        for (var i = 0; i < 24; i++)
        {
            var bytes = new byte[chance.Next(400)];
            chance.NextBytes(bytes);
            File.WriteAllBytes(desk.PathOf("elm.job.yaml"), i % 2 == 0 ? bytes : [.. bytes.Select(b => (byte)(b & 0x7F))]);
            var ran = desk.Run("walk", "elm");
            ran.Code.Should().BeOneOf(0, 1, 3, 4);
            (ran.Results + ran.Messages).Should().NotBeEmpty();
        }
    }
}
