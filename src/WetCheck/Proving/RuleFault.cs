using WetCheck.Model;

namespace WetCheck.Proving;

/// <summary>What a rule lacks, or has too much of, at its place in the book.</summary>
/// <param name="Says">What is wrong and what to write.</param>
internal sealed record RuleFault(At At, string Says);
