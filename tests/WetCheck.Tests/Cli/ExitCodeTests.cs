namespace WetCheck.Tests.Cli;

/// <summary>One case for each exit code, and for each pair that can meet.</summary>
public sealed class ExitCodeTests
{
    private const string Head = "job: Elm\nmethod: liner under mortar\nunits: inches\nplumbing code: IRC 2021\n";

    [Fact]
    public void Nothing_owed_is_0() => Code("job: Elm\n", "rules", "prove", "liner/turn-up").Should().Be(0);

    [Fact]
    public void Something_to_fix_is_1() => Code("job: Elm\n", "walk", "juniper").Should().Be(1);

    [Fact]
    public void A_command_typed_wrong_is_2() => Code("job: Elm\n", "wlak").Should().Be(2);

    [Fact]
    public void Something_to_look_at_is_3() => Code(Head, "walk", "elm").Should().Be(3);

    [Fact]
    public void A_file_that_is_not_there_is_4() => Code(Head, "walk", "oak").Should().Be(4);

    [Fact]
    public void A_value_that_cannot_be_read_is_4_though_there_is_more_to_say() =>
        Code(Head + "stage: flood test\ncurb:\n  height: 4 wide\nliner:\n  left: 1\n", "walk", "elm").Should().Be(4);

    [Fact]
    public void A_broken_shape_is_4() => Code(Head + "curb: [\n", "walk", "elm").Should().Be(4);

    [Fact]
    public void A_file_that_cannot_be_written_is_5_though_there_is_something_to_fix() =>
        Code(Head, "punch", "juniper", "-o", "no/such/folder/list.html").Should().Be(5);

    private static int Code(string elm, params string[] args)
    {
        using var desk = new Desk(("elm.job.yaml", elm));
        return desk.Run(args).Code;
    }
}
