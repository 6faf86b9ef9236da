using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What parts, facts and codes are called on a list.</summary>
internal static class Naming
{
    /// <summary>Where it is: "Right wall"; of a part without a place what it is: "Drain".</summary>
    public static string Place(Part part, Phrases phrases) =>
        Sentence.Capital(part.Place is { } place ? phrases.Of(place.Say) : Part(part, phrases));

    /// <summary>What it is and where: "liner, right wall".</summary>
    public static string Part(Part part, Phrases phrases)
    {
        var one = phrases.Of(part.Kind.One);
        if (one.Length == 0)
        {
            one = part.Kind.Name;
        }

        return part.Place is { } place
            ? Slots.Fill(one, ("place", phrases.Of(place.Say)))
            : Slots.Fill(one, ("place", "")).Trim().TrimEnd(',');
    }

    /// <summary>One name for parts of one kind: "Liner, back wall", or "Liner edges, left wall and back wall".</summary>
    public static string Parts(IReadOnlyList<Part> parts, Phrases phrases)
    {
        var first = parts[0];
        if (parts.Count == 1)
        {
            return Part(first, phrases);
        }

        if (parts.Count == first.Kind.Places.Count && first.Kind.Many == Many.PerPlace)
        {
            return phrases.Of(first.Kind.Several);
        }

        var places = parts.Select(part => part.Place).OfType<Place>().Select(place => phrases.Of(place.Say)).Distinct().ToList();
        var several = phrases.Of(first.Kind.Several) is { Length: > 0 } name ? name : Part(first, phrases);
        return places.Count == 0 ? several : $"{several}, {phrases.List(places)}";
    }

    /// <summary>Its word in the job file, so that the line is found.</summary>
    public static string Reading(ReadingKind kind) => kind.Name;

    /// <summary>Rule and place: <c>214-D</c>.</summary>
    public static string Number(Rule rule, Part part) =>
        part.Place is { Letters.Length: > 0 } place ? $"{Digits(rule)}-{place.Letters}" : Digits(rule);

    /// <summary>A member's own number within its entry: <c>221-A1</c>; the unnamed rest of a list is its <c>other</c>.</summary>
    public static string Member(Entry entry, Check check) =>
        check.Part.IsOther ? entry.Number + "-other"
        : check.Part.Index is { } index ? (entry.Letters.Length > 0 ? "" : "-") is var dash
            ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{entry.Number}{dash}{index}") : entry.Number
        : entry.Number;

    /// <summary>"IRC 2021", "IRC 2006 and older".</summary>
    public static string Code(CodeRange range, Phrases phrases) => range switch
    {
        { From: { } from, To: { } to } when from == to => phrases.Say(Phrase.Code.At, ("family", range.Family), ("year", Year(from))),
        { From: { } from, To: { } to } => phrases.Say(Phrase.Code.Between, ("family", range.Family),
            ("from", Year(from)), ("to", Year(to))),
        { From: { } from } => phrases.Say(Phrase.Code.From, ("family", range.Family), ("year", Year(from))),
        { To: { } to } => phrases.Say(Phrase.Code.To, ("family", range.Family), ("year", Year(to))),
        _ => range.Family,
    };

    public static string Code(StatedCode code) => Cut.Name(code.Edition is { } year ? $"{code.Family} {Year(year)}" : code.Family);

    /// <summary>As the command line takes it: <c>juniper</c> for <c>juniper.job.yaml</c> in this folder, else the path.</summary>
    public static string Job(Job job) => Typed(job.File.AsSpan().ContainsAny('/', '\\') ? job.File : WithoutEnding(job.File));

    /// <summary>The page that would be made of a job: <c>juniper.html</c>.</summary>
    public static string Page(Job job) => Typed(WithoutEnding(job.File[(job.File.AsSpan().LastIndexOfAny('/', '\\') + 1)..]) + ".html");

    private static string WithoutEnding(string file) =>
        file.EndsWith(".job.yaml", StringComparison.Ordinal) ? file[..^".job.yaml".Length] : file;

    /// <summary>A name with a blank in it stands in quotes, so that it can be typed as it is printed.</summary>
    private static string Typed(string name) =>
        name.All(character => char.IsLetterOrDigit(character)
            || "._-/\\:".Contains(character, StringComparison.Ordinal)) ? name : $"\"{name}\"";

    public static string Digits(Rule rule) => rule.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Year(int year) => year.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
