namespace WetCheck.Tests.Cli;

/// <summary>Requirement 1: five answers, any of them don't know, give a first list; nothing waits, nothing is written over.</summary>
[Trait("Requirement", "1")]
public sealed class NewJobTests
{
    private static readonly string[] Known = ["liner under mortar", "flood test", "60 x 36 to studs", "IRC 2021, NEC 2020"];

    /// <summary>Each answer known or not, don't know said in each way.</summary>
    public static TheoryData<string> Answers
    {
        get
        {
            var ways = new TheoryData<string>();
            string[] unknown = ["", "?", "don't know", "Don’t know.", "no sé"];
            for (var mask = 0; mask < 16; mask++)
            {
                ways.Add(string.Concat(Known.Select((answer, i) =>
                    (((mask >> i) & 1) == 1 ? answer : unknown[(mask + i) % unknown.Length]) + "\n")));
            }

            return ways;
        }
    }

    [Theory]
    [MemberData(nameof(Answers))]
    public void Five_answers_give_a_first_list(string answers)
    {
        using var desk = new Desk();
        desk.Typed = "larkspur\n" + answers;
        Given(desk, desk.Run("job", "new"));
    }

    /// <summary>The input may end after any answer; the rest is don't know.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void At_the_end_of_the_input_nothing_waits(int answered)
    {
        using var desk = new Desk();
        desk.Typed = string.Join('\n', Known.Take(answered));
        Given(desk, desk.Run("job", "new", "larkspur"));
        File.ReadAllText(desk.PathOf("larkspur.job.yaml")).Split('\n')
            .Count(line =>
            line is "method: liner under mortar" or "stage: flood test" or "  size: 60 x 36 to studs" or "electrical code: NEC 2020")
            .Should().Be(answered);
    }

    [Fact]
    public void A_number_or_one_word_of_a_name_will_do()
    {
        using var desk = new Desk();
        desk.Typed = "Curbless\n1\n";
        desk.Run("job", "new", "larkspur");
        File.ReadAllText(desk.PathOf("larkspur.job.yaml")).Should().Contain("\nmethod: curbless bonded\n")
            .And.Contain("\nstage: before membrane\n");
    }

    [Fact]
    public void Without_a_name_nothing_is_written()
    {
        using var desk = new Desk();
        desk.Run("job", "new").Should().Match<Ran>(ran => ran.Code == 2 && ran.Messages.Contains("wetcheck job new larkspur"));
        Directory.GetFiles(desk.Folder).Should().ContainSingle();
    }

    [Theory]
    [InlineData("larkspur.job.yaml", "wetcheck walk larkspur")]
    [InlineData("larkspur.answers.html", "wetcheck job new larkspur-2")]
    [InlineData("larkspur.log.jsonl", "wetcheck job new larkspur-2")]
    public void A_file_that_is_there_is_kept(string file, string says)
    {
        using var desk = new Desk((file, "mine"));
        desk.Run("job", "new", "larkspur").Should()
            .Match<Ran>(ran => ran.Code == 5 && ran.Messages.Contains($"{file} is there already")
            && ran.Messages.Contains(says));
        File.ReadAllText(desk.PathOf(file)).Should().Be("mine");
        Directory.GetFiles(desk.Folder).Should().HaveCount(2);
    }

    [Fact]
    public void Lines_from_elsewhere_stay_in_step_when_one_cant_be_read()
    {
        using var desk = new Desk();
        desk.Typed = "pan\nflood test\nbroad\nXYZ 9\n";
        var ran = desk.Run("job", "new", "larkspur");
        ran.Code.Should().Be(3);
        ran.Messages.Split('\n', StringSplitOptions.RemoveEmptyEntries).Should().HaveCount(3)
            .And.OnlyContain(line => line.EndsWith("counts as don't know.", StringComparison.Ordinal));
        File.ReadAllText(desk.PathOf("larkspur.job.yaml")).Should().Contain("\nstage: flood test\n")
            .And.NotContain("XYZ").And.NotContain("broad");
    }

    [Fact]
    public void At_a_keyboard_it_is_asked_once_more()
    {
        using var desk = new Desk { IsHand = true };
        desk.Typed = "pan\nliner under mortar\nnever\nnever\n60 x 36\nIRC 2021\n";
        var ran = desk.Run("job", "new", "larkspur");
        ran.Code.Should().Be(3);
        ran.Messages.Should().Contain("liner under mortar").And.Contain("counts as don't know.");
        File.ReadAllText(desk.PathOf("larkspur.job.yaml")).Should().Contain("\nmethod: liner under mortar\n")
            .And.Contain("\nstage:\n").And.Contain("size: 60 x 36").And.Contain("plumbing code: IRC 2021");
    }

    [Theory]
    [InlineData("Unit #4: \"hall\"", "Unit-4-hall")]
    [InlineData("- yes", "yes")]
    [InlineData("Larkspur, guest bath", "Larkspur-guest-bath")]
    [InlineData("Baño de atrás", "Baño-de-atrás")]
    public void Any_name_is_kept_and_its_file_can_be_named_without_quotes(string name, string file)
    {
        using var desk = new Desk();
        desk.Typed = name + "\n";
        desk.Run("job", "new").Results.Should().Contain("\n" + name + " - ");
        desk.Run("walk", file).Results.Should().StartWith(name + " - ");
    }

    [Fact]
    public void In_Spanish_questions_comments_sheet_and_list_are_Spanish()
    {
        using var desk = new Desk();
        desk.Typed = "liner under mortar\nflood test\n";
        desk.Run("job", "new", "larkspur", "--lang", "es").Results.Should().Contain("Cinco preguntas").And.Contain("Borrador");
        File.ReadAllText(desk.PathOf("larkspur.job.yaml")).Should().Contain("Llene lo que sepa.");
        File.ReadAllText(desk.PathOf("larkspur.answers.html")).Should().Contain("RESPUESTAS").And.Contain("Borrador");
    }

    [Fact]
    public void The_sample_is_written_once_and_walks()
    {
        using var desk = new Desk();
        File.Delete(desk.PathOf("juniper.job.yaml"));
        desk.Run("walk").Messages.Should().Contain("wetcheck job new larkspur").And.Contain("wetcheck job sample");
        desk.Run("job", "sample").Should().Match<Ran>(ran => ran.Code == 0 && ran.Results.Contains("wetcheck walk juniper"));
        desk.Run("walk").Code.Should().Be(1);
        desk.Write("juniper.job.yaml", "job: mine");
        desk.Run("job", "sample").Code.Should().Be(5);
        File.ReadAllText(desk.PathOf("juniper.job.yaml")).Should().Be("job: mine");
    }

    private static void Given(Desk desk, Ran ran)
    {
        ran.Code.Should().Be(3);
        ran.Messages.Should().BeEmpty();
        ran.Results.Should().Contain("UNFINISHED. Nothing to fix");
        File.Exists(desk.PathOf("larkspur.answers.html")).Should().BeTrue();
        desk.Run("walk", "larkspur").Should().Match<Ran>(again => again.Code == 3 && ran.Results.EndsWith(again.Results));
    }
}
