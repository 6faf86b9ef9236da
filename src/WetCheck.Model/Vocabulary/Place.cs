namespace WetCheck.Model;

/// <summary>A place on the job. Sides are lettered clockwise from the entry: A entry, B left, C back, D right.</summary>
/// <param name="Name">As typed: <c>left</c>, <c>left-back</c>, <c>curb inside</c>.</param>
/// <param name="Letters">What a finding's number bears: <c>B</c>, <c>BC</c>; empty for a place without one.</param>
/// <param name="Say">For people: "left wall".</param>
public sealed record Place(string Name, string Letters, Words Say);
