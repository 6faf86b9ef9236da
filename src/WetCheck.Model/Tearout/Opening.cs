namespace WetCheck.Model;

/// <summary>What is known before old work is opened: what to expect inside, and tests that leave it whole.</summary>
/// <param name="Gate">Ids of the cautions that stand before the first blow, in order.</param>
/// <param name="Expected">By age and build.</param>
/// <param name="Tests">In the order to do them.</param>
/// <param name="Before">Said before the first test, one sentence each.</param>
/// <param name="HowFar">How far to open.</param>
/// <param name="NoCures">What is no cure.</param>
public sealed record Opening(IReadOnlyList<string> Gate, IReadOnlyList<Expected> Expected,
    IReadOnlyList<LeakTest> Tests, IReadOnlyList<Words> Before, IReadOnlyList<Words> HowFar,
    IReadOnlyList<Words> NoCures)
{
    public static Opening None { get; } = new([], [], [], [], [], []);
}

/// <param name="When">Of the old work; null: always.</param>
public sealed record Expected(Condition? When, Words Say, IReadOnlyList<string> Rows, At At);

/// <summary>A test with water that opens nothing. It clears only what got wet; no layer is named before it.</summary>
/// <param name="Number">Permanent: <c>X-04</c>.</param>
/// <param name="Result">Where its result stands: dry or wet.</param>
/// <param name="Symptoms">Choices of the old work's symptom for which it is worth doing.</param>
/// <param name="Points">Ids of the causes that a wet result points to.</param>
public sealed record LeakTest(
    string Number, Path Result, IReadOnlyList<string> Symptoms, Words Do, Words Takes, Words Clears,
        IReadOnlyList<string> Points, Words Caution, IReadOnlyList<string> Rows, At At);
