using System.Text.RegularExpressions;
using Json.Schema;
using WetCheck.Flow;
using WetCheck.Reporting;
using WetCheck.Tests.Cli;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Tearout;

/// <summary>Three invented tear-outs, their causes written down before they were read; and what every page of old work promises.</summary>
public sealed class PlantedTearouts
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(Repository.Read("docs/schemas/tearout.schema.json"));

    public static TheoryData<string> Names => ["alder", "hazel", "rowan"];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_was_planted_is_found_and_no_other(string name)
    {
        var report = OldJobs.Read(Job(name));
        report.InSome.Select(cause => cause.Cause.Number).Should().Equal(Planted(name, "causes"));
        report.Leftover.Select(sign => $"{sign.Part.Kind.Name}.{sign.Fact.Kind.Name}").Should().BeEquivalentTo(Planted(name, "leftover"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Why_names_the_line_of_every_sign(string name)
    {
        using var desk = new Desk((name + ".job.yaml", Job(name)));
        var lines = Job(name).Split('\n');
        foreach (var cause in OldJobs.Read(Job(name)).InSome)
        {
            var why = desk.Run("why", name, cause.Cause.Number).Results;
            foreach (var sign in cause.Signs)
            {
                var line = sign.Fact.Counted!.At.Line;
                why.Should().Contain($"line {line}");
                lines[line - 1].Should().Contain(sign.Part.Place?.Name ?? sign.Fact.Kind.Name);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_gate_stands_first_and_no_page_charges_or_says_safe(string name)
    {
        using var desk = new Desk((name + ".job.yaml", Job(name)));
        foreach (var arguments in new string[][] { [], ["--lang", "es"], ["--sheet", "tests"], ["--sheet", "tests", "--lang", "es"] })
        {
            var page = desk.Run(["tearout", name, .. arguments]);
            page.Code.Should().Be(0);
            page.Results.Split('\n').Should().OnlyContain(line => line.Length <= 78);
            page.Results.Should().NotMatchRegex(@"(?i)violation|correction|\bsafe\b|\bsegur[oa]\b|infracción|%");
        }

        var text = desk.Run("tearout", name).Results;
        text.IndexOf("BEFORE ANYTHING IS BROKEN", StringComparison.Ordinal).Should()
            .BeInRange(0, text.IndexOf("\nSEEN", StringComparison.Ordinal));
        text.Should().Contain("Asbestos.").And.Contain("Power.");
        s_schema.Evaluate(System.Text.Json.JsonDocument.Parse(desk.Run("tearout", name, "--format", "json").Results)
            .RootElement).IsValid.Should().BeTrue();
    }

    [Fact]
    public void Two_causes_that_fit_alike_stand_side_by_side()
    {
        var cause = TheBook.Book.Causes.Single(one => one.Number == "M-07");
        var book = TheBook.Book with { Causes = [cause, cause with { Number = "M-98" }] };
        var job = TheBook.Job("units: inches\nold liner: { lap: loose }\nold tests: { pan: wet }\n");
        var report = OldWorkReading.Of(job, book);
        report.Sets.Select(set => set.Single().Cause.Number).Should().Equal("M-07", "M-98");
        report.InAll.Should().BeEmpty();
        TearoutText.Of(report, TheBook.Walk(job) with { Book = book }, "en", "").Should().Contain("AND ONE OF THESE")
            .And.MatchRegex("M-07 .*\\n.*M-98 ");
    }

    [Theory]
    [InlineData("leak below")]
    [InlineData("smell")]
    [InlineData("white salts")]
    [InlineData("soft wall")]
    [InlineData("standing water")]
    [InlineData("loose tile")]
    public void No_layer_is_named_before_its_own_test(string symptom)
    {
        using var desk = new Desk(("old.job.yaml", $"units: inches\nold work: {{ symptom: {symptom} }}\n"));
        var before = desk.Run("tearout", "old", "--sheet", "tests").Results;
        before.Should().NotContain("M-").And.Contain("X-0").And.Contain("No cure");
        foreach (var test in TheBook.Book.Opening.Tests.Where(test => test.Points.Count > 0))
        {
            desk.Write("old.job.yaml",
                $"units: inches\nold work: {{ symptom: {symptom} }}\nold tests: {{ {test.Result.Reading.Name}: wet }}\n");
            var after = desk.Run("tearout", "old", "--sheet", "tests").Results;
            var named = Regex.Matches(after, @"M-\d\d").Select(match => match.Value).Distinct();
            named.Should().BeEquivalentTo(test.Points.Select(id => TheBook.Book.Causes.Single(cause => cause.Id == id).Number));
        }
    }

    [Theory]
    [InlineData("1940", "Before 1950")]
    [InlineData("1950", "1950 to 1977")]
    [InlineData("1977", "1950 to 1977")]
    [InlineData("1978", "1978 to 2005")]
    [InlineData("2006", "From 2006")]
    public void What_may_be_inside_goes_by_the_year(string year, string says)
    {
        using var desk = new Desk(("old.job.yaml", $"units: inches\nbuilding: {{ built: {year} }}\nold work: {{ pan: sheet liner }}\n"));
        var text = desk.Run("tearout", "old").Results;
        text.Should().Contain(says);
        Regex.Matches(text, @"^  (Before 1950|1950 to 1977|1978 to 2005|From 2006):", RegexOptions.Multiline).Should().ContainSingle();
    }

    [Fact]
    public void With_no_year_all_of_them_may_be_and_the_gate_takes_it_as_old()
    {
        using var desk = new Desk(("old.job.yaml", "units: inches\nold work: { pan: sheet liner }\n"));
        desk.Run("tearout", "old").Results.Should().Contain("take it as old").And.Contain("Before 1950")
            .And.Contain("From 2006").And.Contain("Lead");
    }

    private static string Job(string name) => Repository.Read($"docs/examples/tearout/{name}.job.yaml");

    private static string[] Planted(string name, string key) =>
        Regex.Match(Repository.Read($"docs/examples/tearout/{name}.planted.yaml"), $@"^{key}: \[(.*)\]$",
            RegexOptions.Multiline).Groups[1].Value.Split(", ", StringSplitOptions.RemoveEmptyEntries);
}
