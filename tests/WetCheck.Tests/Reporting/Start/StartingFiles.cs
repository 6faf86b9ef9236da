using System.Text.RegularExpressions;
using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Start;

/// <summary>
/// Requirement 2: a job starts with a file of at most 60 lines and 86 columns, two levels, without marks that only a
/// program reads.
/// </summary>
[Trait("Requirement", "2")]
public sealed partial class StartingFiles
{
    public static TheoryData<string, string, string, string> All => Starts.All;

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_short_and_plain(string method, string stage, string size, string language)
    {
        var lines = Starts.File(method, stage, size, language).TrimEnd('\n').Split('\n');
        lines.Should().HaveCountLessThanOrEqualTo(60).And.OnlyContain(line => line.Length <= 86);
        lines.Should().OnlyContain(line => !Marks().IsMatch(line) && Depth().IsMatch(line));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void It_walks_as_it_is_with_nothing_to_fix(string method, string stage, string size, string language)
    {
        var (walk, problems) = Inspection.Of("start.job.yaml", Starts.File(method, stage, size, language), TheBook.Ready);
        problems.Should().BeEmpty();
        walk!.Verdict.Should().Be(Verdict.Unfinished);
        walk.Checks.Should().NotContain(check => check.Result == Result.Correction);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void It_asks_in_words_wherever_it_asks(string method, string stage, string size, string language)
    {
        var text = Starts.File(method, stage, size, language);
        foreach (var section in StartFile.Sections(Starts.Job(method, stage, size), TheBook.Book, language))
        {
            foreach (var line in section.Lines.Append(section.Head).Where(line => line.Answer.Length == 0 && line.Ask.Length > 0))
            {
                text.Should()
                    .Contain($"# {line.Ask}",
                    $"else give its reading a brief question in the vocabulary: {section.Name} {line.Name}");
            }
        }
    }

    [Theory]
    [InlineData("liner under mortar", "flood test", "liner", "left")]
    [InlineData("liner under mortar", "flood test", "nails", "curb inside")]
    [InlineData("liner under mortar", "before bed", "board", "bottom")]
    [InlineData("liner under mortar", "last", "valve", "limit")]
    [InlineData("liner under mortar", "", "liner falls", "")]
    [InlineData("curbless bonded", "flood test", "membrane", "lap")]
    [InlineData("", "", "shower", "size")]
    public void What_the_stop_shows_is_asked(string method, string stage, string section, string line)
    {
        var asked = StartFile.Sections(Starts.Job(method, stage, ""), TheBook.Book, "en").Single(one => one.Name == section);
        asked.Lines.Select(one => one.Name).DefaultIfEmpty("").Should().Contain(line);
    }

    [Fact]
    public void What_stands_before_the_stop_is_planned_and_a_test_is_not_asked_before_it()
    {
        var text = Starts.File("liner under mortar", "flood test", "", "en");
        text.Should().Contain("plan film, plan cement board, plan tile").And.Contain("plan 1\n")
            .And.NotContain("  limit:").And.NotContain("control drop:");
        Starts.File("liner under mortar", "last", "", "en").Should().Contain("  limit:").And.NotContain("plan tile");
    }

    [Fact]
    public void A_curbless_shower_is_not_asked_for_its_curb() =>
        Starts.File("curbless bonded", "before grout", "", "en").Should().Contain("  niche:").And.NotContain("curb:")
            .And.NotContain("curb top");

    [Theory]
    [InlineData("900 x 900 mm", "", "millimetres")]
    [InlineData("900 x 900", "", "millimetres")]
    [InlineData("0.9 m x 0.9 m", "", "millimetres")]
    [InlineData("", "NCC 2022", "millimetres")]
    [InlineData("60 x 36", "", "inches")]
    [InlineData("5' x 3'", "", "inches")]
    [InlineData("60 x 36", "NCC 2022", "inches")]
    [InlineData("", "IRC 2021", "inches")]
    [InlineData("", "", "inches")]
    public void Its_units_are_those_of_the_size_else_of_the_codes_else_inches(string size, string codes, string units) =>
        StartFile.Of(Starts.Job("", "", size, codes), TheBook.Book, "en").Should().Contain($"\nunits: {units} ");

    [Fact]
    public void What_is_answered_at_the_start_is_not_asked_again()
    {
        var text = StartFile.Of(Starts.Job("liner", "2", "60 x 36", "IRC 2021, NEC 2020"), TheBook.Book, "en");
        text.Should().Contain("\nmethod: liner under mortar\n").And.Contain("\nstage: flood test\n").And.Contain("\n  size: 60 x 36\n")
            .And.Contain("\nplumbing code: IRC 2021\n").And.Contain("\nbuilding code: IRC 2021\n")
                .And.Contain("\nelectrical code: NEC 2020\n");
    }

    [GeneratedRegex(@"[{}\[\]&*!]")]
    private static partial Regex Marks();

    [GeneratedRegex("^($|# |[a-z]|  [a-z])")]
    private static partial Regex Depth();
}
