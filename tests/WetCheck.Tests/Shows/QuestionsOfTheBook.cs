using WetCheck.Proving;
using WetCheck.Reporting;
using WetCheck.Tests.Reporting;

namespace WetCheck.Tests.Shows;

/// <summary>Questions are short, lists of looks too. What each rule must bring, <see cref="BookProof"/> holds.</summary>
public sealed class QuestionsOfTheBook
{
    private static readonly string[] s_languages = ["en", "es"];

    [Fact]
    public void Spanish_is_marked_a_draft() => TheBook.Book.Words["es"]["close.record"].Should().EndWith("Borrador.");

    [Fact]
    public void No_question_is_long() =>
        s_languages.SelectMany(language =>
        TheBook.Book.Vocabulary.Kinds.SelectMany(kind => kind.Readings.SelectMany(reading =>
                new[] { reading.Ask, reading.Brief }
                    .Select(text =>
                    (Where: $"{kind.Name}.{reading.Name} {language}",
                    Text: language == "en" ? text.En : text.Es ?? "")))))
        .SelectMany(one => Sentences(one.Text)
            .Where(sentence => sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Length > RuleWords.WordsAtMost).Select(sentence => $"{one.Where}: {sentence}"))
        .Should().BeEmpty();

    /// <summary>Nobody looks at a longer list on a job site (field notes, common practice).</summary>
    [Fact]
    public void No_stop_of_any_method_shows_more_than_nine_looks()
    {
        foreach (var (method,
            stage) in TheBook.Book.Vocabulary.Methods.SelectMany(method =>
            method.Stops.Select(stop => (method.Name, stop.Name))))
        {
            var list = Listing.Of(TheBook.Walk($"method: {method}\nunits: inches\nstage: {stage}\n"), "en", "");
            Listed.InText(ScreenText.Of(list), list.Phrases).Where(one => one.Result == "look").Should()
                .HaveCountLessThanOrEqualTo(9, $"{method}, {stage}").And.NotBeEmpty();
        }
    }

    private static string[] Sentences(string text) =>
        text.Replace('?', '.').Replace('!', '.').Replace(':', '.').Replace(';', '.').Split(". ");
}
