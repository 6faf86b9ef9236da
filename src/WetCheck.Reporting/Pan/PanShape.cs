using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

[Description("Every key is always there. Lengths are inches, falls inches per foot, places [from the left wall, from the entry] in inches. "
    + "A value that is not known, or that there is none of, is null.")]
internal sealed record PanShape
{
    public const string Corners = "Corners against the clock, seen from above; empty: not known.";

    [AllowedValues(PanJson.Format)] public required string Format { get; init; }
    [AllowedValues("en", "es")] public required string Language { get; init; }
    public required string When { get; init; }
    public required string Job { get; init; }
    public required string File { get; init; }
    public required RuleBookShape Rulebook { get; init; }
    [Description(Corners)] public required IReadOnlyList<TwoFigures> Outline { get; init; }

    [Description("Clockwise from the entry. Several on one side are numbered: back-1, back-2.")]
    public required IReadOnlyList<SideShape> Walls { get; init; }

    public required TwoFigures? CircleAt { get; init; }
    public required decimal? Circle { get; init; }
    public required TwoFigures? Drain { get; init; }
    public required TwoFigures? SecondDrain { get; init; }
    [Description("Where two parts of the floor meet; empty: nowhere.")] public required IReadOnlyList<TwoFigures> Ridge { get; init; }
    [Description(MissingShape.All)] public required IReadOnlyList<MissingShape> Missing { get; init; }
    public required IReadOnlyList<LimitsShape> Limits { get; init; }

    [Description("Families that may apply and of which the book has no fall.")]
    public required IReadOnlyList<string> WithoutLimits { get; init; }

    [Description("Limits by limits, the strictest first; in each the drain as a point and with its grate.")]
    public required IReadOnlyList<PanCaseShape> Cases { get; init; }

    public required HeightsShape Heights { get; init; }
    [Description("Square and cubic inches, pounds.")] public required MudShape Mud { get; init; }
    [Description("Inches above the top of the drain.")] public required MarksShape Marks { get; init; }
    public required LevelsShape Levels { get; init; }
    public required TileShape Tile { get; init; }
    public required LinerShape Liner { get; init; }
    public required string Closing { get; init; }
}

internal sealed record SideShape
{
    public required string Side { get; init; }
    public required decimal Length { get; init; }
}

internal sealed record MissingShape
{
    public const string All = "What has to be known before more can be told, and what to write on which line of the job file.";

    public required string Kind { get; init; }
    public required string Line { get; init; }
    public required string Write { get; init; }
    public required string Say { get; init; }
}
