using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting;

/// <summary>What a list says, read back from its text as a person would: each number under the result of its heading.</summary>
internal static partial class Listed
{
    private static readonly (string Key, string Result)[] s_headings =
    [
        ("group.stop", "correction"), ("group.before-cover", "correction"), ("group.before-sign-off", "correction"),
            ("group.touch-up", "correction"),
        ("helper.today", "correction"), ("helper.today-one", "correction"), ("helper.after", "correction"),
            ("helper.after-one", "correction"),
        ("helper.after-more", "correction"), ("helper.not-yours", "correction"),
        ("group.read-again", "read-again"),
        ("group.look-next", "look"), ("group.look-next-before", "look"), ("group.then", "look"), ("helper.look", "look"),
        ("group.hidden", "hidden"), ("group.to-check", "to-check"), ("group.ok", "ok"), ("group.later", "later"),
            ("group.not-here", "not-here"),
        ("owner.group-stop", "correction"), ("owner.group-before-cover", "correction"),
            ("owner.group-before-sign-off", "correction"), ("owner.group-touch-up", "correction"),
        ("owner.nobody", "look"), ("owner.ask-to-see", "look"), ("owner.later", ""), ("owner.say-stop", ""),
        ("helper.today-none", ""), ("group.to-hold", ""), ("group.take-care", ""), ("group.notes", ""),
    ];

    /// <summary>Of the walk itself: what every list must say.</summary>
    public static HashSet<(string Number, string Result)> Of(Walk walk) =>
    [
        .. walk.Entries.Where(entry => entry.Result is Result.Correction or Result.ReadAgain or Result.HiddenNow)
            .Select(entry => (entry.Number, Keys.Of(entry.Result))),
        .. walk.Looks.Take(Listing.LooksShown).Select(look => (look.Number, "look")),
    ];

    /// <summary>A screen, a text or a Markdown page: headings stand alone, numbers begin their line.</summary>
    public static HashSet<(string Number, string Result)> InText(string list, Phrases phrases)
    {
        var (found, result) = (new HashSet<(string, string)>(), "");
        foreach (var line in list.Split('\n'))
        {
            result = Heading(line.TrimStart('#', ' '), phrases) ?? result;
            if (result.Length > 0 && !Counts().IsMatch(line) && Number().Match(line) is { Success: true } number)
            {
                found.Add((number.Groups[1].Value, result));
            }
        }

        return found;
    }

    /// <summary>The message to paste: entries, then the looks and what is hidden by their numbers.</summary>
    public static HashSet<(string Number, string Result)> InMessage(string message, Listing list)
    {
        var (found, result) = (new HashSet<(string, string)>(), "correction");
        var again = " " + list.Phrases["result.read-again"].ToUpperInvariant() + " ";
        foreach (var line in message.Split('\n').Skip(1).TakeWhile(line => line != list.Counts))
        {
            result = line.StartsWith(Before(list.Phrases["message.to-check"]), StringComparison.Ordinal) ? "look"
                : line.StartsWith(Before(list.Phrases["message.hidden"]), StringComparison.Ordinal) ? "hidden"
                : result;
            var numbers = result == "correction" ? Number().Matches(line) : AnyNumber().Matches(line);
            found.UnionWith(numbers.Select(number =>
                (number.Groups[1].Value,
                result == "correction" && line.Contains(again, StringComparison.Ordinal) ? "read-again" : result)));
        }

        return found;
    }

    /// <summary>
    /// The owner's message: looks each on a line of their own where there is nothing to fix; it ends where the cautions
    /// or the codes begin.
    /// </summary>
    public static HashSet<(string Number, string Result)> InOwnersMessage(string message, Listing list)
    {
        string[] ends =
            [list.Phrases["owner.message-say"], .. list.Cautions.Select(line => line.Number + " "),
            .. list.Heading.Codes.Select(Sentence.Capital), list.Heading.Book];
        var lines = message.Split('\n').TakeWhile(line => !ends.Any(end => line.StartsWith(end, StringComparison.Ordinal))).ToList();
        var see = Before(list.Phrases["owner.message-see"]);
        return
        [
            .. InMessage(string.Join('\n', lines.Where(line => !line.StartsWith(see, StringComparison.Ordinal))), list),
            .. lines.Where(line => line.StartsWith(see, StringComparison.Ordinal)).Select(line => (AnyNumber().Match(line).Value, "look")),
        ];
    }

    /// <summary>The page that the owner keeps: entries, and lines under a heading.</summary>
    public static HashSet<(string Number, string Result)> InKept(string page, Phrases phrases)
    {
        var kept = page.Split($"<main lang=\"{phrases.Language}\">")[1];
        return InText(string.Join('\n',
            HeadingOrNumber().Matches(kept)
            .Select(match => System.Net.WebUtility.HtmlDecode(match.Groups["text"].Value))), phrases);
    }

    /// <summary>A page: each article has a number and a mark.</summary>
    public static HashSet<(string Number, string Result)> InHtml(string page)
    {
        var found = new HashSet<(string, string)>();
        foreach (Match article in Article().Matches(page))
        {
            if (MarkUsed().Match(article.Value) is { Success: true } mark)
            {
                found.Add((NumberSpan().Match(article.Value).Groups[1].Value,
                    mark.Groups[1]
                    .Value switch
                    {
                        "stop" => "correction",
                        "again" => "read-again",
                        "check" => "look",
                        var other => other
                    }));
            }
        }

        return found;
    }

    public static HashSet<(string Number, string Result)> InJson(string json)
    {
        var list = JsonNode.Parse(json)!;
        return
        [
            .. list["findings"]!.AsArray()
                .Select(one => (one!["number"]!.GetValue<string>(), one["result"]!.GetValue<string>()))
                .Where(one => one.Item2 is "correction" or "read-again" or "hidden"),
            .. list["looks"]!.AsArray().Take(Listing.LooksShown).Select(one => (one!["number"]!.GetValue<string>(), "look")),
        ];
    }

    private static string? Heading(string line, Phrases phrases)
    {
        var heading = line.Split(" / ")[0];
        return s_headings
            .Where(one => phrases[one.Key] is var said
                && (said == heading
                || (said.Contains('{', StringComparison.Ordinal)
                && heading.StartsWith(Before(said), StringComparison.Ordinal))))
            .OrderByDescending(one => Before(phrases[one.Key]).Length).Select(one => one.Result).FirstOrDefault();
    }

    private static string Before(string said) => said.Split('{')[0];

    [GeneratedRegex(@"^ ?(?:- \*\*)?(\d{3}(?:-[A-Z]+)?)(?=\*\*|\s|$)")]
    private static partial Regex Number();

    /// <summary>"157 OK, 78 not on this job": no number of a rule.</summary>
    [GeneratedRegex(@"^\d+ [^,]+, \d+ ")]
    private static partial Regex Counts();

    [GeneratedRegex(@"\b(\d{3}(?:-[A-Z]+)?)\b")]
    private static partial Regex AnyNumber();

    [GeneratedRegex("(?:<h2>|<span class=\"number\">|<p class=\"line\"><b>)(?<text>[^<]+)<")]
    private static partial Regex HeadingOrNumber();

    [GeneratedRegex("<article.*?</article>", RegexOptions.Singleline)]
    private static partial Regex Article();

    [GeneratedRegex("<use href=\"#([a-z]+)\"")]
    private static partial Regex MarkUsed();

    [GeneratedRegex("<span class=\"number\">([^<]+)</span>")]
    private static partial Regex NumberSpan();
}
