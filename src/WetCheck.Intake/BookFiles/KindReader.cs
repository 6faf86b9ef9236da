using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads one kind of part.</summary>
internal static class KindReader
{
    public static PartKind Read(Fields fields, ReadingKindReader readings, IReadOnlyList<Place> places)
    {
        var problems = fields.Problems;
        var english = fields.Map("en");
        fields.Demand("en");

        var spanish = fields.Map("es");
        var kind = new PartKind(
            fields.Need("kind"),
            fields.Need("stands"),
            Lookup.Enum<Many>(fields.Scalar("many"), FormWords.HowMany, "number", problems) ?? Many.One,
            fields.Text("above"),
            PlacesOf(fields.Texts("places"), places, problems),
            fields.Yes("may be absent"),
            fields.Yes("whole when given"),
            fields.Text("main"),
            ReadingsOf(fields.Map("readings"), readings),
            Both(english, spanish, "one"),
            Both(english, spanish, "several"),
            Both(english, spanish, "ask presence"),
            Both(english, spanish, "ask whole"),
            fields.Words("gloss"),
            0,
            fields.At);
        english?.Demand("one");
        english?.Done();
        spanish?.Done();
        return kind;
    }

    private static Words Both(Fields? english, Fields? spanish, string name) => new(english?.Text(name) ?? "", spanish?.Text(name));

    private static List<Place> PlacesOf(IReadOnlyList<ScalarNode> names, IReadOnlyList<Place> places, ProblemList problems) =>
        [.. names.Select(name => Lookup.In(places, name, place => place.Name, "place", problems)).OfType<Place>()];

    private static List<ReadingKind> ReadingsOf(Fields? lines, ReadingKindReader readings) =>
        [.. (lines?.All() ?? []).Select(entry => readings.Read(entry.Key, entry.Value, lines!.Problems)).OfType<ReadingKind>()];
}
