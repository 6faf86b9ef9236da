using WetCheck.Model;
using WetCheck.Tests.Proof;

namespace WetCheck.Tests.Conventions;

/// <summary>No reading without a rule that asks for it, or a command that the reading names.</summary>
public sealed class AskedByWhom
{
    /// <summary>Read where geometry works out a number from them: the fall of a floor, what is left of a wet coat.</summary>
    private static readonly (string Kind, string Name)[] s_workedOutOf = [("floor corner", "height"), ("membrane", "solids")];

    [Fact]
    public void Every_reading_is_asked_by_a_rule_or_names_its_command()
    {
        var reads = TheBook.Book.Rules.Select(rule => new Reads(rule, TheBook.Book)).ToList();
        var typed = TheBook.Book.Vocabulary.Kinds.SelectMany(kind =>
            kind.Readings.Where(reading => !reading.Derived && reading.Is != Form.Conclusion)
            .Select(reading => (Kind: kind.Name, reading.Name, reading.AskedBy))).ToList();

        typed.Where(one => one.AskedBy is null && !s_workedOutOf.Contains((one.Kind, one.Name))
            && !reads.Exists(rule => rule.Has(one.Kind, one.Name))).Select(one => $"{one.Kind}.{one.Name}").Should()
            .BeEmpty();
        typed.Where(one => one.AskedBy is not (null or "pan" or "tearout")).Should().BeEmpty();
    }
}
