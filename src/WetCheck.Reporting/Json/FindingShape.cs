using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

internal sealed record FindingShape
{
    public const string SameNumber = "Rule and place. The same on every run, job, language and list.";
    public const string OfThePlan = "What the plan makes of it; empty where no plan speaks of it.";
    public const string Place = "FILE:LINE:COLUMN, counted from 1.";

    [Description(SameNumber), RegularExpression(JsonPatterns.Number)] public required string Number { get; init; }
    [RegularExpression(JsonPatterns.Rule)] public required string Rule { get; init; }

    [AllowedValues("correction", "read-again", "to-check", "hidden", "later", "ok", "not-here")]
    public required string Result { get; init; }

    [Description(OfThePlan), AllowedValues("", "on-paper", "short-on-paper", "good-on-paper")]
    public required string Paper { get; init; }

    [AllowedValues("stop", "before-cover", "before-sign-off", "touch-up")] public required string Severity { get; init; }
    public required string Area { get; init; }
    public required string Part { get; init; }
    public required string Found { get; init; }

    [Description("As the rule has it; after a colon, on the tape that was asked.")]
    public required string Limit { get; init; }

    public required string Short { get; init; }
    public required string Say { get; init; }
    public required string Why { get; init; }
    public required string Fix { get; init; }
    public required string Before { get; init; }
    public required string WorkOf { get; init; }

    [Description("Rules that yield to this one here."), RegularExpression(JsonPatterns.Number)]
    public required IReadOnlyList<string> Also { get; init; }

    public required IReadOnlyList<SourceShape> Sources { get; init; }
    [Description(Place)] public required string? At { get; init; }
    [AllowedValues("read", "plan", "computed", null)] public required string? Basis { get; init; }
    public required IReadOnlyList<string> Hold { get; init; }
    public required IReadOnlyList<MemberShape> Members { get; init; }
}

/// <summary>One part of an entry.</summary>
internal sealed record MemberShape
{
    [RegularExpression(JsonPatterns.Member)] public required string Number { get; init; }
    public required string Part { get; init; }

    [AllowedValues("correction", "read-again", "to-check", "hidden", "later", "ok", "not-here")]
    public required string Result { get; init; }

    [Description(FindingShape.OfThePlan), AllowedValues("", "on-paper", "short-on-paper", "good-on-paper")]
    public required string Paper { get; init; }

    public required string Found { get; init; }
    [Description(FindingShape.Place)] public required string? At { get; init; }
}

internal sealed record SourceShape
{
    public required string Row { get; init; }
    public required string Publisher { get; init; }
    public required string Document { get; init; }
    public required string Section { get; init; }
    [Description("The year in force, where the job states one.")] public required string? Edition { get; init; }
    public required string Editions { get; init; }

    [AllowedValues("seen", "second-hand", "from memory", "computed", "practice")]
    public required string Status { get; init; }
}
