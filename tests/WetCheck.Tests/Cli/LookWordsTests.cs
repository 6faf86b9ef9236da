using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli;

/// <summary>What can be typed at <c>look</c>, and what it says to it.</summary>
public sealed class LookWordsTests
{
    [Fact]
    public void More_of_a_list_is_added_by_the_number_of_its_place()
    {
        using var desk = new Desk();
        desk.Run("look", "juniper", "221-B", "2-1/8 below, 1-3/4 below").Results.Should()
            .StartWith("Kept. 221-B, 222-B Correction").And.Contain(" 221-B   Left wall: 2 fasteners through the liner")
            .And.Contain("Found 2-1/8\"");
        Log(desk).Should().ContainSingle().Which.Should().Contain("\"path\":\"nails.left\"").And.NotContain("replaces");
        desk.Run("look", "juniper", "221-D", "3 above").Results.Should().StartWith("Kept.");
    }

    [Fact]
    public void One_nail_is_answered_by_its_own_number()
    {
        using var desk = new Desk();
        desk.Run("look", "juniper", "221-A2", "none").Results.Should().StartWith("Kept.").And.Contain("Found 1-1/4\" below");
        desk.Run("look", "juniper", "221-A1", "none").Results.Should().Contain("221-A");
        Log(desk)[0].Should().Contain("\"path\":\"nails.curb inside 2\",\"read\":\"none\"");
        desk.Run("walk", "juniper").Results.Should().NotContain(" 221-A ");
    }

    [Fact]
    public void Are_these_all_takes_more_of_them_and_asks_again()
    {
        using var desk = new Desk { Typed = "left 3-1/4 above, 4 above, curb inside 1 below\nall\n" };
        var ran = desk.Run("look", "juniper", "221");
        Log(desk)[0].Should().Contain("\"path\":\"nails\",\"read\":\"left 3-1/4 above, left 4 above, curb inside 1 below\"");
        ran.Results.Should().Contain("Found 2-5/8\", 1-1/4\" and 1\" below");
    }

    [Fact]
    public void All_answers_for_every_place_that_is_open()
    {
        using var desk = Five("all folded\n");
        desk.Run("look", "five").Messages.Should().BeEmpty();
        Log(desk).Select(line => line.Split("\"read\":\"")[1].Split('"')[0]).Should()
            .Equal("left-back folded", "right-back folded", "left jamb folded", "right jamb folded");
    }

    [Fact]
    public void Again_mends_the_answer_before()
    {
        using var desk = Five("cut\nagain folded\n");
        desk.Run("look", "five").Messages.Should().BeEmpty();
        Log(desk).Should().HaveCount(2);
        Log(desk)[1].Should().Contain("left-back folded").And.Contain("\"replaces\":\"2026-11-25T16:05:00.");
        desk.Run("why", "five", "226-BC").Results.Should().Contain("226-BC").And.Contain("OK");
    }

    [Fact]
    public void An_answer_of_another_program_that_cant_be_read_is_told_once_and_the_next_is_for_the_next_question()
    {
        using var desk = Five("bent\ncut\n");
        var ran = desk.Run("look", "five");
        ran.Messages.Should().Contain("bent");
        Log(desk).Should().ContainSingle().Which.Should().Contain("right-back cut");
    }

    [Fact]
    public void Each_question_bears_the_number_of_a_check_that_hangs_on_it()
    {
        using var desk = Five("");
        using var all = new Desk { Typed = new string('\n', 60) };
        all.Run("look", "juniper").Results.Should().Contain(" 611     Is there glass")
            .And.Contain(" 341-T   Is this on the job: curb top?");
        desk.Typed = "\n\n\n\n";
        desk.Run("look", "five").Results.Should().Contain(" 226-BC ").And.Contain(" 226-CD ");
    }

    [Theory]
    [InlineData("?")]
    [InlineData("don't know")]
    [InlineData("  ")]
    public void What_is_not_known_keeps_nothing(string typed)
    {
        using var desk = Five(typed + "\n");
        desk.Run("look", "five").Messages.Should().BeEmpty();
        Log(desk).Should().BeEmpty();
    }

    [Fact]
    public void A_line_is_answered_by_its_name_and_a_second_time_mends_it()
    {
        using var desk = Five("");
        desk.Run("look", "five", "liner.right", "3").Results.Should().StartWith("Kept.");
        desk.Run("look", "five", "Liner.D", "3-1/4").Results.Should().StartWith("Kept.");
        Log(desk)[0].Should().NotContain("replaces");
        Log(desk)[1].Should().Contain("\"path\":\"liner.right\"").And.Contain("replaces");
        desk.Run("look", "five", "liner.wrong", "3").Code.Should().Be(2);
    }

    [Fact]
    public void A_number_is_no_code()
    {
        using var desk = Five("");
        var ran = desk.Run("look", "five", "plumbing code", "3");
        ran.Code.Should().Be(2);
        ran.Messages.Should().Contain("IRC");
    }

    [Fact]
    public void A_Correction_comes_with_what_was_found_what_should_be_and_what_to_do()
    {
        using var desk = Five("");
        desk.Run("look", "five", "drain.body", "clamping").Results.Should().StartWith("Kept.");
        var said = desk.Run("look", "five", "drain.weeps", "blocked").Results.TrimEnd().Split('\n');
        said[0].Should().StartWith("Kept. 208 Correction.").And.EndWith(" left.");
        said[1].Should().StartWith(" 208     Drain: weep holes blocked");
        said.Should().HaveCountLessThanOrEqualTo(5).And.OnlyContain(line => line.Length <= 78);
    }

    [Fact]
    public void In_Spanish_question_and_answer()
    {
        using var desk = Five("todos doblada\n");
        var ran = desk.Run("look", "five", "--lang", "es");
        ran.Messages.Should().BeEmpty();
        ran.Results.Should().Contain("Guardado.");
        Log(desk).Should().HaveCount(4);
        desk.Run("look", "five", "liner.right", "3 arriba", "--lang", "es").Results.Should().StartWith("Guardado.");
    }

    private static Desk Five(string typed) =>
        new(("five.job.yaml", Repository.Read("docs/examples/five-answers.job.yaml"))) { Typed = typed };

    private static string[] Log(Desk desk) => [.. Directory.GetFiles(desk.Folder, "*.log.jsonl").SelectMany(File.ReadAllLines)];
}
