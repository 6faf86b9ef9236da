using WetCheck.Model;

namespace WetCheck;

/// <summary>What a rule lacks, or has too much of, at its place in the book.</summary>
/// <param name="Says">What is wrong and what to write.</param>
public sealed record RuleFault(At At, string Says);
