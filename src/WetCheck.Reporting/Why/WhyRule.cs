using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A rule read without a job: what to look at, when it is OK, why, what to do, who says so.</summary>
internal static class WhyRule
{
    public static string Of(RuleBook book, Rule rule, Phrases phrases)
    {
        var text = RuleText.For(rule, phrases);
        var lines = new Labelled(phrases);
        lines.Title(
            Naming.Digits(rule),
            Sentence.Capital(text.Name.Length > 0 ? text.Name : text.Say),
            rule.Body is RuleBody.Require ? Sentence.Capital(phrases["severity." + Keys.Of(rule.Severity)])
                : phrases[rule.Body is RuleBody.Caution ? Phrase.Result.Caution : rule.Body is RuleBody.Note
                ? Phrase.Result.Note : Phrase.Why.Conclusion]);
        lines.Add("look", Asked(rule, phrases));
        lines.Add("applies", rule.When is { } when ? Sentence.Closed(Sentence.Capital(Conditions.Say(when, null, book, phrases))) : "");
        if (rule.Body is RuleBody.Require { Holds: { } holds } && rule.Versions.All(version => version.Limit is null))
        {
            lines.Add("ok-if", Sentence.Closed(Sentence.Capital(Conditions.Say(holds, null, book, phrases))));
        }

        lines.Add("ok-if", rule.Versions.Select(version => Versions.Of(rule, version, book, phrases)));
        lines.Add("care", text.Two);
        lines.Add("why", text.Why);
        lines.Add("do", text.Fix);
        lines.Add("work", phrases.Find("work." + rule.WorkOf) ?? "");
        lines.Add("says",
            RuleSources.Of(rule, book).Select(source => Sentence.Closed(new Cited(source, null, null).Whole(phrases)))
            .Distinct().DefaultIfEmpty(Sentence.Closed(Sentence.Capital(phrases[Phrase.Doubt.Practice]))));
        lines.Add("care", Cautions(rule, book).Select(caution => $"{Naming.Digits(caution)} {caution.In(phrases.Language).Say}"));
        lines.Plain(Sentence.Joined($"{rule.Id}.",
            phrases.Say(Phrase.Head.Book, ("name", book.Name), ("date", book.Date))
            + ".", phrases[Phrase.Close.Record]));
        return lines.ToString();
    }

    /// <summary>The questions of the readings it tests, with how to look.</summary>
    private static IEnumerable<string> Asked(Rule rule, Phrases phrases) => rule.Readings
        .Select(reading => Sentence.Joined(phrases.Of(reading.Ask), phrases.Of(reading.How)));

    /// <summary>Cautions that speak of the same part, or of one above it short of the whole job.</summary>
    private static IEnumerable<Rule> Cautions(Rule rule, RuleBook book)
    {
        var kinds = new HashSet<string>();
        for (var kind = rule.Part; kind?.Above is not null; kind = book.Vocabulary.Kind(kind.Above))
        {
            kinds.Add(kind.Name);
        }

        return rule.Body is RuleBody.Require
            ? book.Rules.Where(other => other.Body is RuleBody.Caution && kinds.Contains(other.Part.Name))
            : [];
    }
}
