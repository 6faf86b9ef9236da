using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One thing to go and see, measure or ask, in pieces.</summary>
/// <param name="Title">Of a look that has something to show already, short on paper or a dispute; else empty.</param>
/// <param name="Detail">What is known, and both sides of it.</param>
/// <param name="Ask">The question, with its part in front.</param>
/// <param name="How">How to look; may be empty.</param>
/// <param name="Tool">What to take along; empty for a look with the eye or into the papers.</param>
public sealed record LookItem(string Number, bool Short, string Title, string Detail, string Ask, string How,
    string Tool, string Line, Look Look);
