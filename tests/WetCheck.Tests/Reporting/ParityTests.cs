using System.Text.Json.Nodes;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>
/// Row 13: every list says the same: number and result of each thing to fix, to read again, hidden now, and of the
/// looks shown.
/// </summary>
public sealed class ParityTests
{
    private static readonly Reader[] s_readers = Enum.GetValues<Reader>();

    public static TheoryData<string> Examples => [.. Walks.Names];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_list_has_the_same_numbers_with_the_same_results(string example)
    {
        var walk = Walks.Example(example);
        var expected = Listed.Of(walk);
        Listed.InJson(JsonList.Of(walk, "en", "")).Should().BeEquivalentTo(expected, "JSON");
        foreach (var language in new[] { "en", "es", "both" })
        {
            foreach (var reader in s_readers.Where(reader => reader != Reader.Owner))
            {
                Compare(walk, reader, language, expected);
            }

            CompareOwner(walk, language, expected);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_whole_screen_has_every_entry_of_the_json(string example)
    {
        var walk = Walks.Example(example);
        foreach (var language in new[] { "en", "es" })
        {
            var list = Listing.Of(walk, language, "");
            Listed.InText(ScreenText.Of(list), list.Phrases).Should().BeEquivalentTo(Listed.Of(walk));
            var whole = JsonNode.Parse(JsonList.Of(walk, language, ""))!["findings"]!.AsArray()
                .Select(one => (one!["number"]!.GetValue<string>(), one["result"]!.GetValue<string>())).ToHashSet();
            var said = Listed.InText(ScreenText.Of(list, all: true), list.Phrases).Where(one => one.Result != "look").ToList();
            said.Except(whole).Should().BeEmpty(language);
            whole.Except(said).Should().BeEmpty(language);
        }
    }

    /// <summary>An owner's message says its counts in sentences, of what is open only.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void The_counts_are_the_same_in_every_list(string example)
    {
        var walk = Walks.Example(example);
        foreach (var language in new[] { "en", "es" })
        {
            var list = Listing.Of(walk, language, "");
            foreach (var text in s_readers.SelectMany(reader =>
                new[] { PunchPage.Html(walk, language, "", reader), PunchPage.Markdown(walk, language, "", reader) })
                .Concat(s_readers.Where(reader => reader != Reader.Owner)
                    .Select(reader => PunchPage.Message(walk, language, "", reader))).Append(ScreenText.Of(list)))
            {
                System.Net.WebUtility.HtmlDecode(text).Replace('\n', ' ').Should().Contain(list.Counts);
            }
        }
    }

    /// <summary>Of a text in both languages each half is read with its own headings; a page has marks, which have no language.</summary>
    private static void Compare(Walk walk, Reader reader, string language, HashSet<(string, string)> expected)
    {
        var because = $"{reader} {language}";
        Listed.InHtml(PunchPage.Html(walk, language, "", reader)).Should().BeEquivalentTo(expected, because);
        foreach (var one in language == "both" ? reader == Reader.Helper ? ["es"] : Array.Empty<string>() : [language])
        {
            var list = Listing.Of(walk, one, "");
            Listed.InText(PunchPage.Markdown(walk, language, "", reader), list.Phrases).Should().BeEquivalentTo(expected, because);
            var text = PunchPage.Message(walk, language, "", reader);
            (reader == Reader.Setter ? Listed.InMessage(text, list) : Listed.InText(text, list.Phrases)).Should()
                .BeEquivalentTo(expected, because);
        }
    }

    /// <summary>
    /// The page to keep and the page to give, each alone. Where nothing was read, the one to keep asks for what comes
    /// later too.
    /// </summary>
    private static void CompareOwner(Walk walk, string language, HashSet<(string Number, string Result)> expected)
    {
        var html = PunchPage.Html(walk, language, "", Reader.Owner);
        var given = html.Split("<main lang=").Skip(1).Where((_, at) => at % 2 == 1);
        given.Should().AllSatisfy(one => Listed.InHtml(one).Should().BeEquivalentTo(expected, "to give, {0}", language));
        foreach (var one in Languages.Of(language))
        {
            var list = Listing.Of(walk, one, "");
            Kept(Listed.InKept(html, list.Phrases), $"to keep, {one}");
            if (language != "both")
            {
                var (keep, give) =
                    PunchPage.Markdown(walk, language, "", Reader.Owner).Split("\n---\n") is [var first, var second]
                    ? (first, second) : ("", "");
                Kept(Listed.InText(keep, list.Phrases), $"to keep, Markdown {one}");
                Listed.InText(give, list.Phrases).Should().BeEquivalentTo(expected, "to give, Markdown {0}", one);
                Listed.InOwnersMessage(PunchPage.Message(walk, language, "", Reader.Owner), list).Should()
                    .BeEquivalentTo(expected, "message, {0}", one);
            }
        }

        void Kept(HashSet<(string Number, string Result)> found, string because)
        {
            var isUnread = walk.Job.Parts.All(part => part.Readings.Count == 0);
            (isUnread ? found.Intersect(expected) : found).Should().BeEquivalentTo(expected, because);
        }
    }
}
