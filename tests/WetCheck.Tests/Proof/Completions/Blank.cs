using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Something that is not known of a job, and all that it may turn out to be.</summary>
/// <param name="Take">Takes it out of a job that knows it.</param>
/// <param name="Ways">Each puts one answer in.</param>
/// <param name="MayContradict">Something else may tell it too, so that not every answer can be true.</param>
/// <param name="IsReadBy">Whether the check of a rule on a part reads it.</param>
internal sealed record Blank(
    string Of, Func<Job, Job> Take, IReadOnlyList<Func<Job, Job>> Ways, bool MayContradict, Func<Reads, Part, bool> IsReadBy);
