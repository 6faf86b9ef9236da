using WetCheck.Model;
using WetCheck.Tests.Proof;

namespace WetCheck.Tests.Conventions;

/// <summary>No reading without a rule that asks for it, or a command that the reading names.</summary>
public sealed class AskedByWhom
{
    [Fact]
    public void Every_reading_is_asked_by_a_rule_or_names_its_command()
    {
        var reads = TheBook.Book.Rules.Select(rule => new Reads(rule, TheBook.Book)).ToList();
        var typed = TheBook.Book.Vocabulary.Kinds.SelectMany(kind => kind.Readings.Where(reading => !reading.Derived && reading.Is != Form.Conclusion).Select(reading => (Kind: kind.Name, reading.Name, reading.AskedBy))).ToList();

        // Corners are read where geometry works out the fall of a floor.
        typed.Where(one => one.AskedBy is null && one is not { Kind: "floor corner", Name: "height" } && !reads.Exists(rule => rule.Has(one.Kind, one.Name))).Select(one => $"{one.Kind}.{one.Name}").Should().BeEmpty();
        typed.Where(one => one.AskedBy is not (null or "pan" or "tearout")).Should().BeEmpty();
    }
}
