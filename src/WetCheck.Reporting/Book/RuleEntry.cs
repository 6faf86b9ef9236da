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
        Line("When", rule.When is { } when ? Conditions.Say(when, null, book, phrases) : "");
        Line(Heading(rule), Body(rule, book, phrases));
        foreach (var version in rule.Versions)
        {
            entry.Append(CultureInfo.InvariantCulture, $"  - {Versions.Of(rule, version, book, phrases)}\n");
        }

        Line("Says", words.Say);
        Line("In full", words.Two);
        Line("Why", words.Why);
        Line("Fix", words.Fix);
        Line("Sources", "");
        foreach (var source in RuleSources.Of(rule, book).Select(source => RuleSources.Say(source, phrases)).Distinct().DefaultIfEmpty(phrases["doubt.practice"]))
        {
            entry.Append(CultureInfo.InvariantCulture, $"  - {source}\n");
        }

        return entry.ToString();

        void Line(string heading, string text)
        {
            if (text.Length > 0 || heading == "Sources")
            {
                entry.Append(CultureInfo.InvariantCulture, $"- **{heading}.**{(text.Length > 0 ? " " + Sentence.Closed(Sentence.Capital(text)) : "")}\n");
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
        var readings = rule.Conditions()
            .Select(condition => condition switch { Condition.Is choice => choice.Path, Condition.Compare compare => compare.Path, _ => null })
            .OfType<Model.Path>().Select(path => path.Reading).ToList();
        var asked = Sentence.Joined(readings.Select(reading => phrases.Of(reading.Ask)).Where(ask => ask.Length > 0).Distinct());
        return asked.Length == 0 && readings.Any(reading => reading.Derived) ? "Worked out from what was measured." : asked;
    }

    private static string Heading(Rule rule) => rule.Body switch
    {
        RuleBody.Require => "OK if",
        RuleBody.Conclude => "Concludes",
        RuleBody.Caution => "Said",
        _ => "Noted",
    };

    private static string Body(Rule rule, RuleBook book, Phrases phrases) => rule.Body switch
    {
        RuleBody.Require { Holds: { } holds } when rule.Versions.All(version => version.Limit is null) => Conditions.Say(holds, null, book, phrases),
        RuleBody.Require => "all of these that apply:",
        RuleBody.Conclude conclude => Sentence.Joined(conclude.Reading.Name, conclude.Climbs.Count == 0 ? "" : "and so of " + phrases.List([.. conclude.Climbs])),
        RuleBody.Caution caution => $"{(caution.From is { } from ? $"from {from} " : "")}until {caution.Until}",
        _ => "",
    };
}
