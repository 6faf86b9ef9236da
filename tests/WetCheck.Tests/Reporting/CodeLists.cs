using WetCheck.Intake;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>The codes of the book, two of them side by side, and what a local change did.</summary>
public sealed class CodeLists
{
    [Fact]
    public void Each_family_of_each_discipline_has_a_line()
    {
        var lines = CodeList.Of(TheBook.Book).Split('\n');
        foreach (var discipline in TheBook.Book.Vocabulary.Disciplines)
        {
            var at = Array.IndexOf(lines, discipline.Name.ToUpperInvariant() + (discipline.Name == "access" ? " STANDARD" : " CODE"));
            at.Should().BeGreaterThanOrEqualTo(0);
            var own = lines.Skip(at + 1).TakeWhile(line => line.Length > 0).ToList();
            foreach (var family in discipline.Families)
            {
                own.Should().Contain(line => line.StartsWith($" {family.Name} ", StringComparison.Ordinal));
            }
        }
    }

    /// <summary>IRC P2708.1 and UPC 408.7; IRC P2709.2 from 2009 and UPC 408.7; both falls alike (P2709.1, 408.7).</summary>
    [Fact]
    public void Two_side_by_side_show_what_either_asks()
    {
        var said = CodeList.Compare(TheBook.Book, "IRC", "UPC");
        said.Should().Contain(" 101     shower too small\n").And.Contain("900 sq in").And.Contain("1024 sq in");
        said.Should().Contain(" 214     liner too low\n         IRC Top 2\" or more").And.Contain("         UPC Top 3\" or more");
        said.Should().NotContain("\n 132 ").And.NotContain("\n 134 ");
        said.Split('\n').Should().OnlyContain(line => line.Length <= Column.Width);
    }

    [Fact]
    public void Either_way_round_the_same_rules_differ() =>
        Numbers(CodeList.Compare(TheBook.Book, "NCC", "BS 5385")).Should().Equal(Numbers(CodeList.Compare(TheBook.Book, "BS 5385", "NCC")));

    [Fact]
    public void A_family_against_itself_differs_in_nothing() =>
        CodeList.Compare(TheBook.Book, "IRC", "IRC").Should().StartWith("IRC against IRC: 0 rules ask otherwise");

    [Fact]
    public void A_local_change_is_told_with_what_was_and_what_is()
    {
        const string Job = "docs/examples/local/maple.job.yaml";
        var (changed, _) = LocalBook.Of(TheBook.Book, Job, Repository.Read(Job), file => Repository.Read("docs/examples/local/" + file));
        var said = CodeList.Local(TheBook.Book, changed!);
        said.Should().Contain(" 612     entry too narrow\n").And.Contain("is  switched off")
            .And.Contain("         is  Top 6\" or more above the finished curb");
        CodeList.Local(TheBook.Book, TheBook.Book).Should().Be("No local change.\n");
    }

    /// <summary>A rule that a town added, and a number that stands in a rule without versions.</summary>
    [Fact]
    public void An_added_rule_and_a_changed_number_of_a_rule_without_versions_are_told()
    {
        const string Job = "docs/examples/local/maple.job.yaml";
        var book = TheBook.Book;
        var (changed, _) = LocalBook.Of(book, Job, Repository.Read(Job), file => Repository.Read("docs/examples/local/" + file));
        var added = changed!.Rules.Where(rule => book.Rule(rule.Id) is null).ToList();
        var said = CodeList.Local(book, changed);
        added.Should()
            .OnlyContain(rule => said.Contains($"\n {rule.Number} ", StringComparison.Ordinal)
            || said.StartsWith($" {rule.Number} ", StringComparison.Ordinal));

        var plain = book.Rule(501)!;
        var other = plain with { Body = book.Rule(537)!.Body };
        CodeList.Local(book, book with { Rules = [.. book.Rules.Select(rule => rule == plain ? other : rule)] })
            .Should().StartWith(" 501 ").And.Contain("was Coverage 95% or more").And.Contain("is  Coverage 80% or more");
    }

    private static IEnumerable<string> Numbers(string said) =>
        said.Split('\n').Where(line => line.Length > 3 && char.IsAsciiDigit(line[1])).Select(line => line[1..4]);
}
