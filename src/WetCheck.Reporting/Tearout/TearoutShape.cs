using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

[Description("Every key is always there. A cause of which nothing was seen is left out. sets: the smallest sets of causes, by number.")]
internal sealed record TearoutShape
{
    [AllowedValues(TearoutJson.Format)] public required string Format { get; init; }
    [AllowedValues("en", "es")] public required string Language { get; init; }
    public required string When { get; init; }
    public required string Job { get; init; }
    public required string File { get; init; }
    public required IReadOnlyList<string> Gate { get; init; }
    public required IReadOnlyList<string> Expect { get; init; }
    public required IReadOnlyList<SignShape> Seen { get; init; }
    public required IReadOnlyList<CauseShape> Causes { get; init; }
    public required IReadOnlyList<IReadOnlyList<string>> Sets { get; init; }
    public required IReadOnlyList<SignShape> Leftover { get; init; }
    public required IReadOnlyList<TestShape> Tests { get; init; }
    public required string Closing { get; init; }
}

internal sealed record SignShape
{
    public required string Fact { get; init; }
    public required string Say { get; init; }
    public required int? Line { get; init; }
}

internal sealed record CauseShape
{
    public required string Number { get; init; }
    public required string Cause { get; init; }
    [AllowedValues("fits", "may-be", "ruled-out")] public required string Fit { get; init; }
    public required string Say { get; init; }
    public required string How { get; init; }
    public required IReadOnlyList<SignShape> Seen { get; init; }
    public required IReadOnlyList<string> Missing { get; init; }
    public required IReadOnlyList<SignShape> Against { get; init; }
    public required string OpenNext { get; init; }
    public required IReadOnlyList<string> Guards { get; init; }
    public required IReadOnlyList<string> Dangers { get; init; }
    public required IReadOnlyList<string> Sources { get; init; }
}

internal sealed record TestShape
{
    public required string Number { get; init; }
    public required string Do { get; init; }
    [AllowedValues("not-done", "wet", "dry")] public required string Result { get; init; }
}
