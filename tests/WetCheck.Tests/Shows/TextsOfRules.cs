using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Reporting;

namespace WetCheck.Tests.Shows;

/// <summary>What every rule must bring: words for each person in each language, a source, a fix, a reason, and a case in which it stays silent.</summary>
public sealed class TextsOfRules
{
    /// <summary>Of a sentence to check by (field notes, common practice).</summary>
    private const int WordsAtMost = 15;

    private static readonly string[] s_languages = ["en", "es"];

    /// <summary>What a rule comes to where it has nothing to object.</summary>
    private static readonly string[] s_silent = ["ok", "not-here", "silent", "no"];

    private static IEnumerable<Rule> Rules => TheBook.Book.Rules;

    [Fact]
    public void Each_has_its_words_in_every_language() => Rules.SelectMany(rule => s_languages.SelectMany(language => Missing(rule, rule.In(language))
        .Select(missing => $"{rule.Id} {language}: {missing}"))).Should().BeEmpty();

    [Fact]
    public void Each_has_a_source_or_says_that_it_is_practice() => Rules
        .Where(rule => rule.AllRows.SelectMany(row => TheBook.Book.Sources.GetValueOrDefault(row, [])).FirstOrDefault() is null)
        .Select(rule => rule.Id).Should().BeEmpty();

    [Fact]
    public void Each_has_a_case_in_which_it_stays_silent() => Rules
        .Where(rule => !TheBook.Cases.Any(one => one.Rule == rule.Id && one.Expect.Values.All(said => s_silent.Contains(said, StringComparer.Ordinal))))
        .Select(rule => rule.Id).Should().BeEmpty();

    [Fact]
    public void Spanish_is_marked_a_draft() => TheBook.Book.Words["es"]["close.record"].Should().EndWith("Borrador.");

    [Fact]
    public void No_sentence_to_check_by_is_long() => s_languages.SelectMany(language => Rules.SelectMany(rule => ToCheckBy(rule.In(language)).Select(text => (Where: $"{rule.Id} {language}", Text: text)))
            .Concat(TheBook.Book.Vocabulary.Kinds.SelectMany(kind => kind.Readings.SelectMany(reading =>
                new[] { reading.Ask, reading.Brief }.Select(text => (Where: $"{kind.Name}.{reading.Name} {language}", Text: language == "en" ? text.En : text.Es ?? ""))))))
        .SelectMany(one => Sentences(one.Text).Where(sentence => sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length > WordsAtMost).Select(sentence => $"{one.Where}: {sentence}"))
        .Should().BeEmpty();

    /// <summary>Nobody looks at a longer list on a job site (field notes, common practice).</summary>
    [Fact]
    public void No_stop_of_any_method_shows_more_than_nine_looks()
    {
        foreach (var (method, stage) in TheBook.Book.Vocabulary.Methods.SelectMany(method => method.Stops.Select(stop => (method.Name, stop.Name))))
        {
            var list = Listing.Of(TheBook.Walk($"method: {method}\nunits: inches\nstage: {stage}\n"), "en", "");
            Listed.InText(ScreenText.Of(list), list.Phrases).Where(one => one.Result == "look").Should().HaveCountLessThanOrEqualTo(9, $"{method}, {stage}").And.NotBeEmpty();
        }
    }

    private static IEnumerable<string> Missing(Rule rule, RuleTexts texts)
    {
        (string Name, string Text, bool IsNeeded)[] all =
        [
            ("name", texts.One, rule.Body is not RuleBody.Conclude), ("why", texts.Why, rule.Body is RuleBody.Require or RuleBody.Note), ("say", texts.Say, rule.Body is RuleBody.Note or RuleBody.Caution),
            ("fix", texts.Fix, rule.Body is RuleBody.Require), ("owner's seen", texts.Seen, rule.Body is RuleBody.Require), ("owner's question", texts.Ask, rule.Body is RuleBody.Require),
            ("what good looks like", texts.Good, rule.Body is RuleBody.Require), ("what to see", texts.See, rule.Body is RuleBody.Require),
        ];
        return all.Where(one => one.IsNeeded && one.Text.Length == 0).Select(one => one.Name);
    }

    private static IEnumerable<string> ToCheckBy(RuleTexts texts) => [texts.One, texts.Say, texts.Seen, texts.Ask, texts.Good, texts.See];

    private static string[] Sentences(string text) => text.Replace('?', '.').Replace('!', '.').Replace(':', '.').Replace(';', '.').Split(". ");
}
