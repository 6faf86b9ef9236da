using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>The words of the lists: each that is asked for is there, in every language the same slots.</summary>
public sealed partial class WordsTests
{
    private static readonly IReadOnlyDictionary<string, string> s_english = TheBook.Book.Words["en"];

    [Fact]
    public void Every_result_deadline_and_doubt_has_a_word()
    {
        var phrases = new Phrases(TheBook.Book, "en");
        Enum.GetValues<Result>().Select(result => phrases["result." + Keys.Of(result)]).Should().OnlyHaveUniqueItems();
        Enum.GetValues<Severity>()
            .Select(severity => phrases["severity." + Keys.Of(severity)] + phrases["count." + Keys.Of(severity)]
            + phrases["group." + Keys.Of(severity)]).Should().OnlyHaveUniqueItems();
        Enum.GetValues<SourceStatus>().Select(status => Cited.Doubt(status, phrases)).Should()
            .Equal("", "second-hand", "from memory", "computed", "trade practice, from memory");
    }

    [Fact]
    public void Every_stop_of_every_method_has_a_word_for_what_is_next() =>
        TheBook.Book.Vocabulary.Methods.SelectMany(method => method.Stops).Select(stop => "next." + stop.Name).Distinct()
            .Where(key => !s_english.ContainsKey(key)).Should().BeEmpty();

    /// <summary>In the lists the compiler holds it: <see cref="PhraseConstants"/>.</summary>
    [Fact]
    public void Every_key_that_is_named_as_a_text_is_there() =>
        Repository.In("src/", ".cs").SelectMany(file => Key().Matches(Repository.Read(file))).Select(match => match.Groups[1].Value)
            .Where(key => !s_english.ContainsKey(key)).Should().BeEmpty();

    [Fact]
    public void No_language_has_a_key_that_english_lacks_or_other_slots()
    {
        foreach (var (language, words) in TheBook.Book.Words)
        {
            words.Keys.Except(s_english.Keys).Should().BeEmpty(language);
            words.Where(pair => !SlotsOf(pair.Value).SequenceEqual(SlotsOf(s_english[pair.Key])))
                .Select(pair => pair.Key).Should().BeEmpty(language);
        }
    }

    [Fact]
    public void What_a_language_lacks_is_said_in_english() => new Phrases(TheBook.Book, "xx")["result.ok"].Should().Be("OK");

    [Fact]
    public void A_value_with_braces_is_never_filled_again() =>
        Slots.Fill("{a} and {b} and {c}", ("a", "{b}"), ("b", "2")).Should().Be("{b} and 2 and {c}");

    [Theory]
    [InlineData("One. Two.", "One.")]
    [InlineData("See P2709.2 first. Then go.", "See P2709.2 first.")]
    [InlineData("No stop", "No stop")]
    public void The_first_sentence_ends_at_a_full_stop_before_a_blank(string text, string first) => Sentence.First(text).Should().Be(first);

    private static IEnumerable<string> SlotsOf(string text) =>
        Slot().Matches(text).Select(match => match.Value).Distinct().Order(StringComparer.Ordinal);

    [GeneratedRegex("(?:phrases|Phrases)(?:\\[|\\.Say\\(|\\.Count\\(|\\.Find\\()\\s*\"([a-z]+\\.[a-z.-]+[a-z])\"")]
    private static partial Regex Key();

    [GeneratedRegex(@"\{[a-z]+\}")]
    private static partial Regex Slot();
}
