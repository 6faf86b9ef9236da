namespace WetCheck.Model;

/// <summary>
/// A way in which old work fails: what must be seen for it, what speaks for it, what rules it out. It describes, it
/// never charges.
/// </summary>
/// <param name="Id">Its file below <c>causes/</c>: <c>low-nail</c>.</param>
/// <param name="Number">Permanent: <c>M-06</c>.</param>
/// <param name="Given">How the old work was built, for it to be possible: no sign of trouble by itself.</param>
/// <param name="Needs">Signs that must all be seen.</param>
/// <param name="Supports">Signs that it accounts for as well.</param>
/// <param name="Contradicts">Any of them rules it out.</param>
/// <param name="Guards">Ids of the rules that keep the new work from it.</param>
/// <param name="Dangers">Keys of the words that say what is dangerous about it.</param>
/// <param name="Rows">Of the sources.</param>
/// <param name="How">How it fails.</param>
/// <param name="Next">What to open next to be surer.</param>
public sealed record Cause(
    string Id,
    string Number,
    IReadOnlyList<Condition> Given,
    IReadOnlyList<Condition> Needs,
    IReadOnlyList<Condition> Supports,
    IReadOnlyList<Condition> Contradicts,
    IReadOnlyList<string> Guards,
    IReadOnlyList<string> Dangers,
    IReadOnlyList<string> Rows,
    Words Name,
    Words How,
    Words Next,
    At At);
