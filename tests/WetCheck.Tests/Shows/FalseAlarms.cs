namespace WetCheck.Tests.Shows;

/// <summary>
/// What looks like a fault and is none, by the codes of the trade's list of false alarms (common practice): each is a case that stays
/// silent, of a rule that a fact past its limit makes speak.
/// </summary>
public sealed class FalseAlarms
{
    private const int Known = 48;

    /// <summary>No rule of the book could raise them: held as whole jobs below.</summary>
    private static readonly string[] OfNoRule = ["F-29", "F-30", "F-42", "F-48"];

    public static TheoryData<string> OfRules => [.. Enumerable.Range(1, Known).Select(number => $"F-{number:00}").Except(OfNoRule)];

    [Theory]
    [MemberData(nameof(OfRules))]
    public void It_is_a_silent_case_of_a_rule_that_can_speak(string code)
    {
        var silent = TheBook.Cases.Where(one => one.Name.Contains(code, StringComparison.Ordinal) && !one.Expect.Values.Any(IsFault)).ToList();
        silent.Should().NotBeEmpty();
        silent.Should().Contain(one => TheBook.Cases.Any(other => other.Rule == one.Rule && other != one && other.Expect.Values.Any(Speaks)), "its twin speaks");
    }

    /// <summary>A bed of 15 sq ft without mesh; a liner method on a slab; new grout with a white haze; paper board of 1998, opened.</summary>
    [Theory]
    [InlineData("method: liner under mortar\nunits: inches\nstage: before tile\nshower: { size: 60 x 36 finished }\nbed: { thickness: 1-1/2 }\n")]
    [InlineData("method: bonded membrane with curb\nunits: inches\nstage: last\nplumbing code: UPC 2021\nroom floor: { base: slab on ground }\n")]
    [InlineData("method: liner under mortar\nunits: inches\nstage: last\nold work: { symptom: white salts }\n")]
    [InlineData("method: liner under mortar\nunits: inches\nstage: before liner\nbuilding: { built: 1998 }\nold board: { kind: paper gypsum }\n")]
    public void No_rule_raises_it(string job) => TheBook.Walk(job).ToFix.Select(entry => entry.Number).Should().BeEmpty();

    private static bool IsFault(string expected) => expected.StartsWith("correction", StringComparison.Ordinal);

    /// <summary>A note is shown: where the trade says "usually", its twin is no more than that.</summary>
    private static bool Speaks(string expected) => IsFault(expected) || expected == "shown";
}
