using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Cli;

/// <summary>
/// What <c>-o</c> may replace: an earlier list. A job and what belongs to it never, anything else only with
/// <c>--force</c>.
/// </summary>
public sealed class OutputTests
{
    private const string Other = "a letter to the owner\n";

    [Theory]
    [InlineData("juniper.job.yaml")]
    [InlineData("juniper.log.jsonl")]
    [InlineData("juniper.levels.csv")]
    [InlineData("other.job.yaml")]
    [InlineData("./JUNIPER.JOB.YAML")]
    [InlineData("town.yml")]
    [InlineData("link.html")]
    [InlineData("absent.log.jsonl")]
    public void A_job_and_what_belongs_to_it_is_never_replaced(string target)
    {
        using var desk = new Desk(
            ("juniper.levels.csv", "from left,from entry,up\n0,0,3/4\n"), ("other.job.yaml", "job: Other\n"), ("town.yml", Other));
        desk.Run("look", "juniper", "214-D", "3");
        File.CreateSymbolicLink(desk.PathOf("link.html"), desk.PathOf("juniper.job.yaml"));
        var before = Texts(desk);
        foreach (var words in new[] { "punch juniper --format md -o", "punch juniper --format html --force -o" })
        {
            var ran = desk.Run([.. words.Split(' '), target]);
            ran.Code.Should().Be(5, words);
            ran.Messages.Should().Contain(target).And.Contain("name of its own");
            ran.Results.Should().BeEmpty();
            Texts(desk).Should().BeEquivalentTo(before);
        }
    }

    [Fact]
    public void A_job_and_a_local_file_of_any_name_are_known()
    {
        using var desk = new Desk();
        desk.Write("plan.txt",
            Repository.Read("docs/examples/local/maple.job.yaml")
            .Replace("springfield.local.yaml", "town.md", StringComparison.Ordinal));
        desk.Write("town.md", Repository.Read("docs/examples/local/springfield.local.yaml"));
        var before = Texts(desk);
        desk.Run("punch", "plan.txt", "-o", "plan.txt", "--force").Code.Should().Be(5);
        desk.Run("punch", "plan.txt", "-o", "town.md", "--force").Code.Should().Be(5);
        Texts(desk).Should().BeEquivalentTo(before);
    }

    [Theory]
    [InlineData("juniper.html")]
    [InlineData("juniper.md")]
    [InlineData("juniper.txt")]
    [InlineData("juniper.json")]
    [InlineData("juniper.svg")]
    public void Another_text_is_replaced_only_with_force(string target)
    {
        using var desk = new Desk((target, Other));
        var command = target.EndsWith(".svg", StringComparison.Ordinal) ? "draw" : "punch";
        var ran = desk.Run(command, "juniper", "-o", target);
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain($"{target} is there already").And.Contain("--force");
        File.ReadAllText(desk.PathOf(target)).Should().Be(Other);
        desk.Run(command, "juniper", "-o", target, "--force").Results.Should().Be($"Written: {target}\n".ReplaceLineEndings());
        File.ReadAllText(desk.PathOf(target)).Should().NotBe(Other);
    }

    public static TheoryData<string, string, string> Lists => [.. from reader in new[] { "setter", "owner", "helper" }
        from language in new[] { "en", "es", "both" }
        from ending in new[] { "html", "md", "txt", "json" }
        select (reader, language, ending)];

    [Theory]
    [MemberData(nameof(Lists))]
    public void An_earlier_list_is_replaced(string reader, string language, string ending)
    {
        using var desk = new Desk();
        string[] words = ["punch", "juniper", "--for", reader, "--lang", language, "-o", $"j.{ending}"];
        desk.Run(words).Code.Should().Be(1);
        desk.Run("look", "juniper", "208", "open");
        var again = desk.Run(words);
        again.Code.Should().Be(1, again.Messages);
        again.Messages.Should().BeEmpty();
    }

    [Fact]
    public void A_drawing_is_replaced_by_a_drawing_and_ends_as_one()
    {
        using var desk = new Desk();
        desk.Run("draw", "juniper", "-o", "j.svg").Code.Should().Be(0);
        desk.Run("draw", "juniper", "--drawing", "section", "-o", "j.svg").Code.Should().Be(0);
        var ran = desk.Run("draw", "juniper", "-o", "j.html");
        ran.Code.Should().Be(2);
        ran.Messages.Should().Contain("End j.html in .svg.");
        File.Exists(desk.PathOf("j.html")).Should().BeFalse();
        desk.Run("draw", "-h").Results.Should().Contain(".svg").And.NotContain(".html");
    }

    [Fact]
    public void A_link_to_a_list_stays_a_link()
    {
        using var desk = new Desk();
        Directory.CreateDirectory(desk.PathOf("shared"));
        File.CreateSymbolicLink(desk.PathOf("j.md"), "shared/j.md");
        desk.Run("punch", "juniper", "-o", "j.md").Code.Should().Be(1);
        new FileInfo(desk.PathOf("j.md")).LinkTarget.Should().Be("shared/j.md");
        File.ReadAllText(desk.PathOf("shared/j.md")).Should().StartWith("# Juniper");
    }

    [Fact]
    public void A_folder_and_a_folder_that_is_not_there_are_told()
    {
        using var desk = new Desk();
        Directory.CreateDirectory(desk.PathOf("lists.md"));
        desk.Run("punch", "juniper", "-o", "lists.md").Messages.Should().Contain("lists.md is a folder.");
        var ran = desk.Run("punch", "juniper", "-o", "gone/j.md");
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain("Is the folder there");
    }

    private static Dictionary<string, string> Texts(Desk desk) =>
        Directory.GetFiles(desk.Folder).ToDictionary(path => Path.GetFileName(path)!, File.ReadAllText);
}
