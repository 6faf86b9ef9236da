using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Words of the trade that the owner's page explains, in one language.</summary>
internal sealed class Glossary
{
    private const string Section = "gloss.";

    private readonly Dictionary<string, string> _meanings;

    private Glossary(Dictionary<string, string> meanings)
    {
        _meanings = meanings;
        var forms = meanings.Keys.OrderByDescending(form => form.Length).Select(Regex.Escape);
        Word = new Regex($"""(?<![\w-])(?<form>{string.Join('|', forms)})(?<end>['’]s?)?(?!\w)""",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
    }

    /// <summary>Any form of any word, the longest first, with its possessive in the group <c>end</c>.</summary>
    public Regex Word { get; }

    public IEnumerable<string> Forms => _meanings.Keys;

    /// <param name="method">Where one word stands for two things, as in Spanish, the one that the method has is meant.</param>
    public static Glossary Of(RuleBook book, Phrases phrases, Method? method)
    {
        var meanings = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var keys = book.Words["en"].Keys.Where(key => key.StartsWith(Section, StringComparison.Ordinal))
            .Select(key => key[Section.Length..]);
        foreach (var key in keys.OrderBy(key => method?.RulesOut.Contains(key) == true))
        {
            var text = phrases[Section + key].Split('=', 2, StringSplitOptions.TrimEntries);
            var meaning = text.Length > 1 ? text[1] : phrases.Of(InVocabulary(key, book.Vocabulary));
            foreach (var form in text[0].Split(',', StringSplitOptions.TrimEntries))
            {
                meanings.TryAdd(form, meaning);
            }
        }

        return new Glossary(meanings);
    }

    public string Meaning(string form) => _meanings[form];

    /// <summary>Of a kind of part, or of a reading of one: <c>drain.weeps</c>.</summary>
    private static Words InVocabulary(string key, Vocabulary vocabulary)
    {
        var dot = key.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? vocabulary.Kind(key)?.Gloss ?? Words.None
            : vocabulary.Kind(key[..dot])?.Find(key[(dot + 1)..])?.Gloss ?? Words.None;
    }
}
