using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

internal sealed record LookShape
{
    [Description(FindingShape.SameNumber), RegularExpression(JsonPatterns.Number)]
    public required string Number { get; init; }

    [Description(FindingShape.OfThePlan), AllowedValues("", "on-paper", "short-on-paper", "good-on-paper")]
    public required string Paper { get; init; }

    public required IReadOnlyList<string> Parts { get; init; }
    public required string Asks { get; init; }
    public required string Ask { get; init; }
    public required string Known { get; init; }
    public required string How { get; init; }
    public required string? Tool { get; init; }
    [RegularExpression(JsonPatterns.Number)] public required IReadOnlyList<string> Settles { get; init; }
    [RegularExpression(JsonPatterns.Number)] public required IReadOnlyList<string> Bears { get; init; }
    public required string At { get; init; }
}
