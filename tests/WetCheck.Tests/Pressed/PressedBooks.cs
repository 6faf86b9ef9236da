using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Pressed;

namespace WetCheck.Tests.Pressed;

/// <summary>The book that the program was built with is the one that stands in the files, to the last field.</summary>
public sealed class PressedBooks
{
    [Fact]
    public void The_built_in_book_is_what_reading_the_files_gives() =>
        new SameObjects().Differences(TheBook.Book, BuiltInBook.Ready.Book).Should().BeEmpty();

    [Fact]
    public void The_built_in_cases_are_what_reading_the_files_gives() =>
        new SameObjects().Differences(TheBook.Cases, BuiltInBook.Cases).Should().BeEmpty();

    [Fact]
    public void Every_noun_of_a_book_is_held_against_its_twin()
    {
        var held = new SameObjects();
        held.Differences(TheBook.Book, BuiltInBook.Ready.Book).Should().BeEmpty();
        var nouns = typeof(Carry).GetMethods(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.NonPublic)
            .Select(method => method.ReturnType)
            .Where(type => type.Assembly == typeof(RuleBook)
                .Assembly && !type.IsAbstract && type != typeof(RuleCase) && type != typeof(LocalChanges));
        nouns.Should().BeSubsetOf(held.Types, "the book of the repository has at least one of each");
        held.Values.Should().BeGreaterThan(10_000);
    }

    [Fact]
    public void Local_changes_are_kept_too()
    {
        var book = TheBook.Book with { Local = [new LocalChanges("Springfield", "2026-05", "springfield.local.yaml", 3)] };
        new SameObjects().Differences(book, PressedBook.Read(PressedBook.Write(book))).Should().BeEmpty();
    }

    [Fact]
    public void What_was_lost_moved_or_made_two_of_is_found()
    {
        var book = TheBook.Book;
        var lost = book with { Materials = book.Materials with { JointFrom = null } };
        var moved = book with { Rules = [.. book.Rules.Reverse()] };
        var twin = book with { Rules = [.. book.Rules.Skip(1).Prepend(book.Rules[0] with { Part = book.Rules[0].Part with { } })] };
        foreach (var other in new[] { lost, moved, twin })
        {
            new SameObjects().Differences(book, other).Should().NotBeEmpty();
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(127)]
    [InlineData(128)]
    [InlineData(int.MaxValue)]
    [InlineData(-1)]
    public void A_whole_number_comes_back(int number)
    {
        var local = new LocalChanges("", "", "", number);
        var book = TheBook.Book with { Local = [local] };
        PressedBook.Read(PressedBook.Write(book)).Local.Should().Equal(local);
    }

    [Fact]
    public void A_book_that_is_cut_short_or_goes_on_is_not_read()
    {
        var pressed = PressedBook.WriteCases(TheBook.Cases);
        FluentActions.Invoking(() => PressedBook.ReadCases([.. pressed, 0])).Should().Throw<InvalidDataException>();
        FluentActions.Invoking(() => PressedBook.ReadCases(pressed[..^1])).Should().Throw<IndexOutOfRangeException>();
    }
}
