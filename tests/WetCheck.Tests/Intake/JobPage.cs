using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>All that a job says, without where it says it, so that two jobs can be compared.</summary>
internal static class JobPage
{
    public static string Of(Job job) => string.Join('\n', Lines(job));

    private static IEnumerable<string> Lines(Job job) =>
    [
        $"{job.Method?.Name} | {job.Stage} | {job.Metric} | {job.ReadingsBy} | {job.Notes}",
        .. job.Codes.OrderBy(code => code.Key, StringComparer.Ordinal)
            .Select(code => $"{code.Key}: {code.Value.Family} {code.Value.Edition} {code.Value.InBook}"),
        .. job.Lists.Select(list => $"{list.Kind.Name} whole: {list.Whole}"),
        .. job.Parts.Select(part =>
            $"{part.Part.Id} < {part.Part.Above?.Id} {part.Said}: "
            + string.Join("; ", part.Readings.OrderBy(pair => pair.Key, StringComparer.Ordinal)
                .Select(pair => $"{pair.Key} = {string.Join(" & ", pair.Value.Select(Reading))}"))),
    ];

    public static string Reading(Reading reading) =>
        $"{(reading.Planned ? "plan " : "")}{Value(reading.Value)}{Said(" by ", reading.By)}"
        + $"{Said(" with ", reading.Tool?.Name)}{Said(" on ", reading.Date)}";

    public static string Value(ReadingValue value) => value switch
    {
        ReadingValue.OfChoice choice => choice.Key,
        ReadingValue.OfAmount amount =>
            $"{Stretch(amount.Amount)} in {amount.Unit.Key}{Said(" above ", amount.Datum)}{(amount.Exact ? " exactly" : "")}",
        ReadingValue.OfFall fall => $"{fall.Rise} over {fall.Run} {(fall.ByRatio ? "by ratio" : "")}",
        ReadingValue.OfSize size => $"{size.Width} x {size.Depth} {size.Between} {size.Floor}",
        ReadingValue.OfPoint point => $"{point.FromLeft}, {point.FromEntry}",
        ReadingValue.OfOutline outline => string.Join(" ", outline.Corners.All.Select(corner => $"{corner.FromLeft},{corner.FromEntry}")),
        ReadingValue.OfLevels levels =>
            string.Join(" ", levels.Points.All.Select(point => $"{point.FromLeft},{point.FromEntry} {point.Up}")),
        ReadingValue.OfNone => "none",
        _ => "hidden",
    };

    private static string Stretch(Interval amount) => amount.IsPoint
        ? amount.Lo!.Value.ToString()
        : string.Create(CultureInfo.InvariantCulture,
            $"{(amount.LoOpen ? "over " : "from ")}{amount.Lo} to {(amount.HiOpen ? "under " : "")}{amount.Hi}");

    private static string Said(string before, string? text) => text is null ? "" : before + text;
}
