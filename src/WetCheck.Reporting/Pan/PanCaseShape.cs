using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One case of a floor's falls.</summary>
internal sealed record PanCaseShape
{
    [Description(LimitsShape.WhereRead), AllowedValues("square", "along-folds")] public required string Measure { get; init; }
    [Description(LimitsShape.PerFoot)] public required decimal Least { get; init; }
    [Description(LimitsShape.PerFoot)] public required decimal Most { get; init; }
    [Description(LimitsShape.Answers)] public required IReadOnlyList<string> Held { get; init; }
    [AllowedValues("point", "grate", "channel", "channel-at-wall")] public required string Drain { get; init; }

    [Description("Null: the drain's place is not known."), JsonConverter(typeof(TriJson))]
    public required Tri Feasible { get; init; }

    [Description("Heights of the rim above the drain: the least fall asks for the first, the most allows the second.")]
    public required TwoFigures? RimWindow { get; init; }

    [Description("The lowest mark of the tape in the window; null: none is in it.")]
    public required decimal? Rim { get; init; }

    [Description("The height of which walls and valleys are told: rim, else the first of rim_window.")]
    public required decimal? Height { get; init; }

    public required IReadOnlyList<PanWallShape> Walls { get; init; }
    public required IReadOnlyList<ValleyShape> Valleys { get; init; }
    [Description("Of all planes.")] public required decimal? Steepest { get; init; }
    [Description("Of all folds.")] public required decimal? Flattest { get; init; }

    [Description("Where the drain may stand, against the clock, to 0.005 in; empty: nowhere.")]
    public required IReadOnlyList<TwoFigures> Region { get; init; }

    [Description("The place of the region nearest to the drain.")] public required TwoFigures? Nearest { get; init; }
    [Description("Of a floor with two drains: the drain of the part that is told.")] public required TwoFigures? Part { get; init; }
    [Description("Corners beside a channel that is shorter than its wall.")] public required IReadOnlyList<PanEndShape> Ends { get; init; }

    [Description("Walls that the drain can't see, and the corner in the way.")]
    public required IReadOnlyList<HiddenShape> Hidden { get; init; }

    [Description("The cheapest first; empty where it is feasible.")] public required IReadOnlyList<WayOutShape> WaysOut { get; init; }
}

internal sealed record PanWallShape
{
    public required string Side { get; init; }
    public required decimal Length { get; init; }
    [Description("Square to the wall, to the drain.")] public required decimal Run { get; init; }
    public required decimal Slope { get; init; }
}

internal sealed record ValleyShape
{
    public required string Corner { get; init; }
    public required TwoFigures At { get; init; }
    public required decimal Length { get; init; }
    public required decimal Slope { get; init; }
}

internal sealed record PanEndShape
{
    public required string Corner { get; init; }
    public required decimal Far { get; init; }
    public required decimal Height { get; init; }
}

internal sealed record HiddenShape
{
    public required string Side { get; init; }
    public required TwoFigures By { get; init; }
}

internal sealed record WayOutShape
{
    [AllowedValues("dip-rim", "move-drain", "one-plane", "two-drains", "split", "constant-fall")] public required string Kind { get; init; }
    public required string Say { get; init; }

    [Description("1 and over only the mortar, 2 the pipe under the floor, 3 another drain, 4 a second one; "
        + "a thousandth for each inch of change.")]
    public required decimal Cost { get; init; }
}
