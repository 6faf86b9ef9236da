using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace WetCheck.Reporting;

[Description("Every key is always there. A text that has nothing to say is empty; a value that there is none of is null.")]
internal sealed record WalkShape
{
    [AllowedValues(JsonList.Format)] public required string Format { get; init; }
    [AllowedValues("en", "es")] public required string Language { get; init; }
    [Description("As given on the command line; empty where it was not.")] public required string When { get; init; }
    public required string Job { get; init; }
    public required string File { get; init; }
    public required string? Method { get; init; }
    public required string? Stage { get; init; }
    public required RuleBookShape Rulebook { get; init; }
    [Description("Codes taken, stated or tried, in words.")] public required IReadOnlyList<string> Codes { get; init; }

    [Description("Readiness for the next cover. Never a word on the shower.")]
    [AllowedValues("not-ready", "unfinished", "nothing-owed")]
    public required string Verdict { get; init; }

    public required IReadOnlyList<FindingShape> Findings { get; init; }
    public required IReadOnlyList<LookShape> Looks { get; init; }
    public required IReadOnlyList<SaidShape> Cautions { get; init; }
    public required IReadOnlyList<SaidShape> Notes { get; init; }
    public required CountsShape Counts { get; init; }
    public required IReadOnlyList<ProblemShape> Problems { get; init; }
    public required string Closing { get; init; }
}

internal sealed record RuleBookShape
{
    public required string Name { get; init; }
    public required string Date { get; init; }
}

internal sealed record SaidShape
{
    [Description(FindingShape.SameNumber), RegularExpression(JsonPatterns.Number)]
    public required string Number { get; init; }
    public required string Rule { get; init; }
    public required string Say { get; init; }
    public required string More { get; init; }
}

/// <summary>Entries by their result.</summary>
internal sealed record CountsShape
{
    [Range(0, int.MaxValue)] public required int Correction { get; init; }
    [JsonPropertyName("on-paper"), Range(0, int.MaxValue)] public required int OnPaper { get; init; }
    [JsonPropertyName("to-check"), Range(0, int.MaxValue)] public required int ToCheck { get; init; }
    [JsonPropertyName("read-again"), Range(0, int.MaxValue)] public required int ReadAgain { get; init; }
    [Range(0, int.MaxValue)] public required int Hidden { get; init; }
    [Range(0, int.MaxValue)] public required int Later { get; init; }
    [Range(0, int.MaxValue)] public required int Ok { get; init; }
    [JsonPropertyName("not-here"), Range(0, int.MaxValue)] public required int NotHere { get; init; }
}

internal sealed record ProblemShape
{
    public required string Code { get; init; }
    public required string At { get; init; }
    public required string Say { get; init; }
    public required string Typed { get; init; }
    [AllowedValues("asked", "blank", "stops")] public required string Effect { get; init; }
}
