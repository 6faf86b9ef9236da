using WetCheck.Flow;
using WetCheck.Model;

namespace WetCheck.Tests.Tearout;

/// <summary>Jobs of old work, written from conditions of the rule book.</summary>
internal static class OldJobs
{
    public static TearoutReport Read(string text) => OldWorkReading.Of(TheBook.Job(text), TheBook.Book);

    public static TearoutReport Read(IReadOnlyDictionary<string, string> lines) => Read(Text(lines));

    /// <param name="lines">By section and line: <c>old bed.wet</c>, <c>old walls.left</c>.</param>
    public static string Text(IReadOnlyDictionary<string, string> lines) => "units: inches\n" + string.Concat(lines
        .GroupBy(line => line.Key[..line.Key.IndexOf('.', StringComparison.Ordinal)])
        .Select(section => $"{section.Key}:\n"
            + string.Concat(section.Select(line => $"  {line.Key[(section.Key.Length + 1)..]}: \"{line.Value}\"\n"))));

    /// <summary>Lines that make a condition true, by its first way; all four walls where it speaks of each.</summary>
    public static void Meet(Condition condition, Dictionary<string, string> lines, string? place = null)
    {
        switch (condition)
        {
            case Condition.All all:
                all.Of.ToList().ForEach(one => Meet(one, lines, place));
                break;
            case Condition.AnyOf any:
                Meet(any.Of[0], lines, place);
                break;
            case Condition.Some some:
                MeetAt(some.Of, some.Meets, lines, ["back"]);
                break;
            case Condition.Each each:
                MeetAt(each.Of, each.Meets, lines, ["left", "back", "right", "entry"]);
                break;
            case Condition.Is test:
                lines[place ?? $"{test.Path.Kind ?? "old work"}.{test.Path.Reading.Name}"] = test.OneOf[0];
                break;
            case Condition.Compare { To: Operand.Fixed to } test:
                lines[place ?? $"{test.Path.Kind ?? "old work"}.{test.Path.Reading.Name}"] = $"{to.Quantity.Value.Approximate}";
                break;
            default:
                throw new InvalidOperationException(condition.ToString());
        }
    }

    private static void MeetAt(Relation of, Condition meets, Dictionary<string, string> lines, IEnumerable<string> places)
    {
        var stands = of.Kind == "old wall" ? "old walls" : "old damp up to";
        places.ToList().ForEach(at => Meet(meets, lines, $"{stands}.{at}"));
    }
}
