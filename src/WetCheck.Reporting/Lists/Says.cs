using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Who says so, and how sure that is.</summary>
internal static class Says
{
    /// <summary>The sources of the side in force, of the family in force; of any family where none is stated.</summary>
    public static IReadOnlyList<Cited> Of(Rule rule, Side? side, Telling telling)
    {
        var entries = Rows(rule, side).SelectMany(row => telling.Walk.Book.Sources.GetValueOrDefault(row, [])).ToList();
        var codes = side is { Codes.Count: > 0 } ? side.Codes
            : [.. telling.Job.Codes.Values.Select(code => new CodeRange(code.Family, code.Edition, code.Edition))];
        var inForce = entries.Where(entry => entry.Of is null || codes.Any(code => code.Family == entry.Of)).ToList();
        return [.. (inForce.Count > 0 ? inForce : entries)
            .Select(entry => new Cited(entry, EditionOf(entry, codes), SeenIn(entry, entries)))];
    }

    /// <summary>"IRC 2021 P2709.2, second-hand; ANSI A108.01".</summary>
    public static string Line(IEnumerable<Cited> cited, Phrases phrases, int most = int.MaxValue)
    {
        var said = cited.Select(c => c.Say(phrases)).Distinct().Take(most).ToList();
        return said.Count == 0 ? Sentence.Capital(phrases[Phrase.Doubt.Practice]) : string.Join("; ", said);
    }

    /// <summary>Rows of the versions in force first; those of the rule as a whole where they have none.</summary>
    private static IEnumerable<string> Rows(Rule rule, Side? side)
    {
        var ofVersions = side?.Versions.SelectMany(version => version.Rows).Distinct().ToList() ?? [];
        return ofVersions.Count > 0 ? ofVersions : rule.AllRows;
    }

    private static int? EditionOf(SourceEntry entry, IReadOnlyList<CodeRange> codes) =>
        codes.FirstOrDefault(code => code.Family == entry.Of) is { From: { } from, To: { } to } && from == to ? from : null;

    private static string? SeenIn(SourceEntry entry, IReadOnlyList<SourceEntry> all) =>
        entry.Status is SourceStatus.Seen or SourceStatus.Computed
        ? null
        : all.FirstOrDefault(other => other.Row == entry.Row && other.Status == SourceStatus.Seen
            && other.Of is not null && other.Of != entry.Of)?.Of;
}

/// <summary>A source as it stands for one job.</summary>
/// <param name="Edition">The year in force, where one is stated.</param>
/// <param name="SeenIn">Another family, in whose text the same value was seen.</param>
internal sealed record Cited(SourceEntry Entry, int? Edition, string? SeenIn)
{
    /// <summary>With its editions, where no job states one.</summary>
    public string Whole(Phrases phrases) =>
        Entry is { Status: not SourceStatus.Practice, Editions.Length: > 0 } ? $"{Say(phrases)}, {Entry.Editions}"
        : Say(phrases);

    public string Say(Phrases phrases)
    {
        var doubt = Entry.GivenIn.Length > 0 ? phrases.Say(Phrase.Doubt.GivenIn, ("file", Entry.GivenIn)) : Doubt(Entry.Status, phrases);
        if (Entry.Status == SourceStatus.Practice)
        {
            return Sentence.Capital(doubt);
        }

        var year = Edition?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "";
        var named = Sentence.Joined(Publisher, Entry.Document, year, Entry.Section);
        var seen = SeenIn is null ? "" : phrases.Say(Phrase.Doubt.SeenIn, ("family", SeenIn));
        return string.Join(", ", new[] { Sentence.Capital(named), doubt, seen }.Where(part => part.Length > 0));
    }

    /// <summary>A code is known by its name; a standard by its publisher too: "ANSI A108.01", "State of Wisconsin: SPS".</summary>
    private string Publisher => Entry switch
    {
        { Of: not null } or { Status: SourceStatus.Computed } => "",
        _ when Entry.Document.StartsWith(Entry.Publisher, StringComparison.OrdinalIgnoreCase) => "",
        _ when Entry.Publisher.All(char.IsUpper) || Entry.Document.EndsWith("practice", StringComparison.Ordinal) => Entry.Publisher,
        _ => Entry.Publisher + ":",
    };

    public static string Doubt(SourceStatus status, Phrases phrases) => status switch
    {
        SourceStatus.Seen => "",
        SourceStatus.SecondHand => phrases[Phrase.Doubt.SecondHand],
        SourceStatus.FromMemory => phrases[Phrase.Doubt.FromMemory],
        SourceStatus.Computed => phrases[Phrase.Doubt.Computed],
        _ => phrases[Phrase.Doubt.Practice],
    };
}
