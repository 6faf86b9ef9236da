using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Proving;

/// <summary>What the words of a rule must be: there for each reader in each language, and short.</summary>
internal static class RuleWords
{
    /// <summary>Of a sentence to check by (field notes, common practice).</summary>
    public const int WordsAtMost = 15;

    private static readonly string[] s_languages = ["en", "es"];

    public static IEnumerable<string> Faults(Rule rule) =>
        s_languages.SelectMany(language => rule.Texts.TryGetValue(language, out var texts)
        ? [.. Missing(rule, texts).Concat(Long(texts)).Concat(Helper(rule, texts)).Select(fault => $"{language}: {fault}")]
        : new[] { $"there is no {language}: write its words in that language too" }).Concat(Uneven(rule));

    private static IEnumerable<string> Missing(Rule rule, RuleTexts texts)
    {
        var (owed, remark) = (rule.Body is RuleBody.Require, rule.Body is RuleBody.Note);
        (string Line, bool IsNeeded)[] needed =
        [
            ("name", rule.Body is not RuleBody.Conclude), ("why", owed || remark), ("say", remark || rule.Body is RuleBody.Caution),
            ("fix", owed), ("owner: seen", owed), ("owner: ask", owed), ("owner: good", owed), ("owner: see", owed),
        ];
        var there = Lines(texts).Where(line => line.Text.Length > 0).Select(line => line.Line).ToHashSet();
        return needed.Where(line => line.IsNeeded && !there.Contains(line.Line)).Select(line => $"{line.Line} is missing");
    }

    private static IEnumerable<string> Long(RuleTexts texts) =>
        from line in Lines(texts)
        where line.Line is "name" or "say" or "owner: seen" or "owner: ask" or "owner: good" or "owner: see"
        from sentence in Sentences(line.Text)
        let words = sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length
        where words > WordsAtMost
        select $"{line.Line} has a sentence of {words} words, {WordsAtMost} at most: {sentence}";

    /// <summary>A fix in long sentences is cut at its commas, which reads badly: then the rule has words for the helper.</summary>
    private static IEnumerable<string> Helper(Rule rule, RuleTexts texts)
    {
        var (line, text) =
            texts.Helper.Length > 0 ? ("helper", texts.Helper) : texts.Fix.Length > 0 ? ("fix", texts.Fix)
            : ("say", texts.Say);
        if (rule.Body is not RuleBody.Conclude && !ShortSentences.Whole(text))
        {
            yield return $"{line} has a sentence of more than {ShortSentences.Words} words, and that is what a helper "
                + $"is told: shorten it, or write helper:";
        }
    }

    /// <summary>What is said in one language and not in the other.</summary>
    private static IEnumerable<string> Uneven(Rule rule) => rule.Texts.TryGetValue("es", out var spanish)
        ? Lines(rule.Texts["en"]).Zip(Lines(spanish))
            .Where(pair => pair.First.Text.Length > 0 != pair.Second.Text.Length > 0)
            .Select(pair => $"{pair.First.Line} stands in one language only")
        : [];

    private static IReadOnlyList<(string Line, string Text)> Lines(RuleTexts texts) =>
    [
        ("name", texts.One), ("name: many", texts.Many), ("say", texts.Say), ("two", texts.Two), ("why", texts.Why), ("fix", texts.Fix),
        ("owner: seen", texts.Seen), ("owner: ask", texts.Ask), ("owner: good", texts.Good), ("owner: see", texts.See),
            ("helper", texts.Helper),
    ];

    private static string[] Sentences(string text) =>
        text.Replace('?', '.').Replace('!', '.').Replace(':', '.').Replace(';', '.').Split(". ");
}
