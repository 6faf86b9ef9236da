using System.Globalization;
using System.Text;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>One rule on the page of rules.</summary>
internal static class RuleEntry
{
    public static string Of(Rule rule, RuleBook book, Phrases phrases)
    {
        var words = RuleText.For(rule, phrases);
        var entry = new StringBuilder();
        entry.Append(CultureInfo.InvariantCulture, $"\n### {rule.Number} · {Title(rule, words)}\n\n`{rule.Id}`\n\n");
        Line("Look at", LookAt(rule, phrases));
        Line("How", How(rule, phrases));
        Line("When", rule.When is { } when ? Conditions.Say(when, null, book, phrases) : "");
        Line(Heading(rule), Body(rule, book, phrases));
        foreach (var version in rule.Versions)
        {
            entry.Append(CultureInfo.InvariantCulture, $"  - {Versions.Of(rule, version, book, phrases)}\n");
        }

        Line("Differs by", DiffersBy(rule, book, phrases));
        Line("Says", words.Say);
        Line("In full", words.Two);
        Line("Why", words.Why);
        Line("Fix", words.Fix);
        Line("Owner asks", OwnerAsks(rule, phrases));
        Line("Sources", "");
        foreach (var source in RuleSources.Of(rule, book).Select(source => RuleSources.Say(source, phrases)).Distinct()
            .DefaultIfEmpty(phrases[Phrase.Doubt.Practice]))
        {
            entry.Append(CultureInfo.InvariantCulture, $"  - {source}\n");
        }

        Line("Local", Local(rule, book));
        return entry.ToString();

        void Line(string heading, string text)
        {
            if (text.Length > 0 || heading == "Sources")
            {
                entry.Append(CultureInfo.InvariantCulture,
                    $"- **{heading}.**{(text.Length > 0 ? " " + Sentence.Closed(Sentence.Capital(text)) : "")}\n");
            }
        }
    }

    /// <summary>What is wrong; of a caution the word before its colon; else the rule's own name.</summary>
    private static string Title(Rule rule, RuleText words) => words.Name.Length > 0 ? words.Name
        : words.Say.IndexOf(':', StringComparison.Ordinal) is var colon and > 0 ? words.Say[..colon]
        : rule.Id[(rule.Chapter.Length + 1)..].Replace('-', ' ');

    /// <summary>The questions whose answers the rule tests.</summary>
    private static string LookAt(Rule rule, Phrases phrases)
    {
        var readings = rule.Readings.ToList();
        var asked = Sentence.Joined(readings.Select(reading => phrases.Of(reading.Ask)).Where(ask => ask.Length > 0).Distinct());
        return asked.Length == 0 && readings.Any(reading => reading.Derived) ? "Worked out from what was measured." : asked;
    }

    /// <summary>"By tape or a look." and the hints of its questions.</summary>
    private static string How(Rule rule, Phrases phrases)
    {
        var readings = rule.Readings.ToList();
        var tools = readings.Select(reading => reading.Tool).OfType<Tool>().Select(tool => phrases.Of(tool.Say)).Distinct().ToList();
        return Sentence.Joined([.. tools.Count == 0 ? []
            : new[] { Sentence.Closed($"By {phrases.List(tools, Phrase.Say.Or)}") },
            .. readings.Select(reading => phrases.Of(reading.How)).Where(how => how.Length > 0).Distinct()]);
    }

    private static string OwnerAsks(Rule rule, Phrases phrases)
    {
        var texts = RuleText.Owner(rule, phrases);
        return texts.Ask.Length == 0 ? "" : Sentence.Joined(texts.Ask, Sentence.Closed("Good: " + texts.Good));
    }

    /// <summary>"plumbing code", where its versions look at one.</summary>
    private static string DiffersBy(Rule rule, RuleBook book, Phrases phrases) => phrases.List(
        [.. Codes(rule.Versions.Select(version => version.When).OfType<Condition>())
            .Select(name => book.Vocabulary.Discipline(name) is { } discipline ? phrases.Of(discipline.Say) : name)]);

    /// <summary>Who may ask otherwise.</summary>
    private static string Local(Rule rule, RuleBook book) => rule.Body is not RuleBody.Require ? ""
        : Codes(rule.Conditions()).Any() || RuleSources.Of(rule, book).Any(source => source.Of is not null)
            ? "a town may ask otherwise: ask the building department, and write its figure as a [local change](local-changes.md)"
            : "no code names it here: the maker's sheet and what was agreed in writing come first";

    private static IEnumerable<string> Codes(IEnumerable<Condition> conditions) =>
        conditions.SelectMany(condition => condition.Parts()).OfType<Condition.CodeIs>().Select(code => code.Discipline)
            .Distinct().Order(StringComparer.Ordinal);

    private static string Heading(Rule rule) => rule.Body switch
    {
        RuleBody.Require => "OK if",
        RuleBody.Conclude => "Concludes",
        RuleBody.Caution => "Said",
        _ => "Noted",
    };

    private static string Body(Rule rule, RuleBook book, Phrases phrases) => rule.Body switch
    {
        RuleBody.Require { Holds: { } holds } when rule.Versions.All(version => version.Limit is null) =>
            Conditions.Say(holds, null, book, phrases),
        RuleBody.Require => "all of these that apply:",
        RuleBody.Conclude conclude =>
            Sentence.Joined(conclude.Reading.Name,
            conclude.Climbs.Count == 0 ? "" : "and so of " + phrases.List([.. conclude.Climbs])),
        RuleBody.Caution caution => $"{(caution.From is { } from ? $"from {from} " : "")}until {caution.Until}",
        _ => "",
    };
}
