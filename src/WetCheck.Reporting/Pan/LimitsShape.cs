using System.ComponentModel;
using System.ComponentModel.DataAnnotations;

namespace WetCheck.Reporting;

internal sealed record LimitsShape
{
    public const string WhereRead = "Where the least fall is read: square to each wall, or along the folds.";
    public const string PerFoot = "Inches per foot.";
    public const string Answers = "Answers with which it is so, to a question that decides and is not answered; empty: it is so with each.";

    [Description(WhereRead), AllowedValues("square", "along-folds")] public required string Measure { get; init; }
    [Description(PerFoot)] public required decimal Least { get; init; }
    [Description(PerFoot)] public required decimal Most { get; init; }
    [Description(Answers)] public required IReadOnlyList<string> Held { get; init; }

    [Description("Only some read the least fall so, and the job does not say how it is read.")]
    public required bool Disputed { get; init; }

    public required IReadOnlyList<string> Codes { get; init; }
    public required string Say { get; init; }
    public required IReadOnlyList<string> Sources { get; init; }
}
