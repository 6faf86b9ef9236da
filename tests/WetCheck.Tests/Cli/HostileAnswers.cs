using System.Text.Json;
using WetCheck.Intake;
using WetCheck.Tests.Conventions;
using WetCheck.Tests.Reporting;

namespace WetCheck.Tests.Cli;

/// <summary>Whatever is typed at a question is shown, kept and written as plain text, and is read back as it was.</summary>
public sealed class HostileAnswers
{
    public static TheoryData<int> Attacks => [.. Depth.OneOf(2, Enumerable.Range(0, HostileLists.Attacks.Length))];

    [Theory]
    [MemberData(nameof(Attacks))]
    public void Answers_of_look(int at)
    {
        var attack = HostileLists.Attacks[at];
        using var desk = new Desk { Typed = $"{attack}\n3\nagain {attack}\n{attack} 3-1/4\n" };
        var ran = new[]
        {
            desk.Run("look", "juniper", "--by", attack),
            desk.Run("look", "juniper", "214-D", attack),
            desk.Run("look", "juniper", "214-D", "3", "--by", attack),
            desk.Run("look", "juniper", attack, "3"),
            desk.Run("look", attack),
            desk.Run("walk", "juniper"),
        };
        foreach (var said in ran)
        {
            HostileLists.Unseen((said.Results + said.Messages).ReplaceLineEndings("\n"), attack);
        }

        ran[^1].Code.Should().NotBe(4, ran[^1].Messages);
        ran[^1].Messages.Should().BeEmpty("the log that was kept is read");
        var log = File.Exists(desk.PathOf("juniper.log.jsonl")) ? File.ReadAllText(desk.PathOf("juniper.log.jsonl")) : "";
        foreach (var line in log.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            HostileLists.Unseen(line, attack);
            JsonDocument.Parse(line).RootElement.ValueKind.Should().Be(JsonValueKind.Object);
        }

        File.ReadAllText(desk.PathOf("juniper.job.yaml")).Should()
            .Be(Repository.Read("docs/examples/juniper.job.yaml"), "look never writes it");
    }

    [Theory]
    [MemberData(nameof(Attacks))]
    public void Name_and_answers_of_a_new_job(int at)
    {
        var attack = HostileLists.Attacks[at];
        foreach (var (named,
            answers) in new[] { ("a " + attack, "liner under mortar\nflood test\n60 x 36\nIRC 2021\n"),
            ("plain", string.Concat(Enumerable.Repeat(attack.ReplaceLineEndings(" ") + "\n", 4))) })
        {
            using var desk = new Desk { Typed = answers };
            var said = desk.Run("job", "new", named);
            HostileLists.Unseen((said.Results + said.Messages).ReplaceLineEndings("\n"), attack);
            var made = Directory.EnumerateFiles(desk.Folder, "*", SearchOption.AllDirectories)
                .Where(file => Path.GetFileName(file) != "juniper.job.yaml").ToList();
            made.Where(file => Path.GetDirectoryName(file) != desk.Folder).Should().BeEmpty(attack);
            foreach (var file in made)
            {
                var text = File.ReadAllText(file);
                HostileLists.Unseen(text, attack);
                if (file.EndsWith(".yaml", StringComparison.Ordinal))
                {
                    var (job, problems) = JobReader.Read("new.job.yaml", text, TheBook.Book.Vocabulary);
                    problems.Should().BeEmpty(attack);
                    said.Results.Should().Contain(job!.Name.Length > 60 ? job.Name[..20] : job.Name.Split(' ')[0], attack);
                    File.ReadAllText(file.Replace(".job.yaml", ".answers.html", StringComparison.Ordinal)).Should()
                        .Contain(System.Net.WebUtility.HtmlEncode(job.Name).Split(' ')[0], attack);
                }
                else
                {
                    HostileLists.Tags(text, ["ol", "em", "i", "strong", "h2"]).Should().BeEmpty(attack);
                }
            }
        }
    }
}
