using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What is told of limits wherever they stand in JSON.</summary>
internal static class LimitsJson
{
    public static LimitsShape Shape(PanLimits limits, PanSays says) => new()
    {
        Measure = Measure(limits),
        Least = PerFoot(limits.Least),
        Most = PerFoot(limits.Most),
        Held = Answers(limits),
        Disputed = limits.Disputed,
        Codes = limits.Codes,
        Say = says.Limits(limits),
        Sources = [.. says.Sources(limits)],
    };

    public static string Measure(PanLimits limits) => limits.AlongFolds ? "along-folds" : "square";

    public static decimal PerFoot(Quantity fall) => JsonFigures.Round(fall.Value.Approximate * 12);

    /// <summary>Those with which the limits hold.</summary>
    public static IReadOnlyList<string> Answers(PanLimits limits) => [.. limits.Held.Select(choice => choice.Key)];
}
