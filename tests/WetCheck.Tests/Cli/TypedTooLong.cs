using WetCheck.Cli.Text;
using WetCheck.Model;

namespace WetCheck.Tests.Cli;

/// <summary>
/// Words and lines longer than a hand types are told by their beginning; a folder that is not there is told before
/// anything is asked.
/// </summary>
public sealed class TypedTooLong
{
    private static readonly string Endless = new('x', 120_000);

    [Fact]
    public void A_word_of_the_command()
    {
        using var desk = new Desk();
        foreach (var words in (string[][])[["walk", Endless], ["look", "juniper", "liner.right", Endless],
            ["walk", "juniper", "--if", Endless], [Endless]])
        {
            var ran = desk.Run(words);
            ran.Code.Should().Be(2);
            ran.Messages.Should().Contain("longer than 4,000 characters");
            (ran.Messages.Length + ran.Results.Length).Should().BeLessThan(300);
        }
    }

    [Fact]
    public void A_line_at_a_question_is_skipped_and_the_next_is_heard()
    {
        using var desk = new Desk { Typed = $"{Endless}\n3\n" };
        var ran = desk.Run("look", "juniper", "214-D");
        ran.Messages.Should().Contain("longer than 4,000 characters");
        ran.Messages.Length.Should().BeLessThan(300);
        File.Exists(desk.PathOf("juniper.log.jsonl")).Should().BeFalse();
    }

    [Fact]
    public void Of_an_endless_line_little_is_kept_in_memory()
    {
        using var lines = new TypedLines(new StringReader($"one\r\n\rtwo\n{Endless}\nthree"));
        Enumerable.Range(0, 6).Select(_ => lines.ReadLine()).Should()
            .Equal("one", "", "two", Endless[..(Limits.TypedCharacters + 1)], "three", null);
    }

    [Fact]
    public void A_job_in_a_folder_that_is_not_there_is_told_before_the_first_question()
    {
        using var desk = new Desk { Typed = "liner under mortar\n" };
        var ran = desk.Run("job", "new", "two words/elm");
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain("There is no folder two words.").And.Contain("wetcheck job new elm");
        ran.Results.Trim().Split('\n').Should().ContainSingle();
        Directory.CreateDirectory(desk.PathOf("two words"));
        desk.Run("job", "new", "two words/elm");
        desk.Run("job", "new", "two words/elm").Messages.Should().Contain("wetcheck walk \"two words/elm\" ");
    }

    [Theory]
    [InlineData("\u3164")]
    [InlineData("\u115F")]
    [InlineData("\u2800")]
    [InlineData("\uDB40\uDC41")]
    public void A_sign_that_no_screen_shows_is_marked(string sign)
    {
        VisibleText.Of($"a{sign}b").Should().Be($"a{new string(VisibleText.Mark, sign.Length)}b");
        using var desk = new Desk(("elm.job.yaml", $"job: Elm{sign}\n"));
        desk.Run("walk", "elm").Messages.Should().Contain("can't be seen").And.NotContain(sign);
    }
}
