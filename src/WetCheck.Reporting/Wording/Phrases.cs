using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The words of a rule book in one language. What a language lacks is said in English.</summary>
public sealed class Phrases(RuleBook book, string language)
{
    private readonly IReadOnlyDictionary<string, string>? _own = book.Words.GetValueOrDefault(language);
    private readonly IReadOnlyDictionary<string, string>? _english = book.Words.GetValueOrDefault("en");

    public string Language { get; } = language;

    public Show Show { get; } = new(language);

    /// <param name="key">Section and key of <c>rules/words</c>: <c>say.found</c>.</param>
    /// <exception cref="KeyNotFoundException">Neither the language nor English has it.</exception>
    public string this[string key] => Find(key) ?? throw new KeyNotFoundException($"rules/words has no \"{key}\".");

    public string Say(string key, params ReadOnlySpan<(string Slot, string Value)> slots) =>
        Slots.Fill(this[key], slots) is var said && Language == Languages.Spanish ? Contraction.Of(said) : said;

    public string Count(string key, int count) => Say(key, ("count", count.ToString(CultureInfo.InvariantCulture)));

    public string Of(Words words) => Language == "es" ? words.Es ?? words.En : words.En;

    /// <summary>"left, back and right".</summary>
    public string List(IReadOnlyList<string> items, string last = Phrase.Say.And) => items.Count < 2
        ? string.Concat(items)
        : $"{string.Join(", ", items.SkipLast(1))} {this[last]} {items[^1]}";

    /// <summary>Null where neither the language nor English has the key.</summary>
    public string? Find(string key) => _own?.GetValueOrDefault(key) ?? _english?.GetValueOrDefault(key);
}
