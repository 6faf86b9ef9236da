using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>All that stands behind one line of a list, or behind one rule.</summary>
public static class WhyText
{
    /// <summary>What an entry rests on, line by line.</summary>
    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(Walk walk, Entry entry, string language, string when)
    {
        var telling = new Telling(walk, new Phrases(walk.Book, language));
        var phrases = telling.Phrases;
        var evidence = Evidence.Of(entry.Worst);
        var item = Items.Of(entry, telling);
        var lines = new Labelled(phrases);
        var word = Keys.Of(entry.Paper) is { Length: > 0 } paper
            ? $"{phrases["result." + Keys.Of(entry.Result)]}, {phrases["result." + paper]}"
            : phrases["result." + Keys.Of(entry.Result)];
        lines.Title(entry.Number, $"{item.Place}: {item.What}", word.ToUpperInvariant(),
            entry.Result == Result.Correction ? item.Before.TrimEnd('.') : "");
        WhyMeasured.Add(lines, entry, item, evidence, telling);
        lines.Add("hangs", Hangs(entry.Worst, telling));
        var cited = Says.Of(entry.Rule, evidence.Side, telling);
        lines.Add("says",
            cited.Select(source => Sentence.Closed(source.Say(phrases))).Distinct()
            .DefaultIfEmpty(Sentence.Closed(Sentence.Capital(phrases[Phrase.Doubt.Practice])))
            .Append(cited.Any(source => source.Entry.Of is not null) ? phrases[Phrase.Why.AskLocal] : ""));
        lines.Add("elsewhere", Versions.Elsewhere(entry.Rule, evidence.Side, walk.Book, phrases));
        lines.Add("why", item.Why);
        lines.Add("do", item.Do);
        lines.Add("work", item.Work);
        lines.Add("would", WouldAlso.Of(entry, evidence, telling));
        lines.Add("members", Members(entry, telling));
        lines.Add("also", entry.Also.Select(also => $"{also.Number} {Items.Of(also, telling).What}"));
        lines.Add("care",
            entry.Result == Result.Correction
            ? Lines.Said(walk.Cautions, telling).Select(line => $"{line.Number} {line.More}") : []);
        if (entry.Result is Result.Correction or Result.ToCheck or Result.ReadAgain)
        {
            lines.Add("done", $"wetcheck look {Naming.Job(walk.Job)} {entry.Number}");
        }

        lines.Plain(Closing(entry.Rule, telling, when));
        return lines.ToString();
    }

    /// <summary>What a note or a caution of the list says, and who says so.</summary>
    public static string Of(Walk walk, Check shown, string language, string when)
    {
        var telling = new Telling(walk, new Phrases(walk.Book, language));
        var (phrases, text, line) = (telling.Phrases, RuleText.For(shown, telling), Lines.Said([shown], telling)[0]);
        var lines = new Labelled(phrases);
        lines.Title(Naming.Digits(shown.Rule), Sentence.Capital(Naming.Part(shown.Part, phrases)),
            phrases["result." + Keys.Of(shown.Result)].ToUpperInvariant());
        lines.Plain(line.Text);
        lines.Add("care", text.Two);
        lines.Add("why", text.Why);
        lines.Add("says",
            Says.Of(shown.Rule, null, telling).Select(source => Sentence.Closed(source.Say(phrases))).Distinct()
            .DefaultIfEmpty(Sentence.Closed(Sentence.Capital(phrases[Phrase.Doubt.Practice]))));
        lines.Plain(Closing(shown.Rule, telling, when));
        return lines.ToString();
    }

    /// <summary>A rule without a job.</summary>
    public static string Of(RuleBook book, Rule rule, string language) => WhyRule.Of(book, rule, new Phrases(book, language));

    private static string Closing(Rule rule, Telling telling, string when) =>
        Sentence.Joined($"{rule.Id}.", $"{Heading.Of(telling, when).Book}{(when.Length > 0 ? "; " + when : "")}.",
            telling.Phrases[Phrase.Close.Record]);

    /// <summary>What would settle an open check: the question of each fact it hangs on.</summary>
    private static IEnumerable<string> Hangs(Check check, Telling telling) => check.Judgement.Hangs
        .Select(hang => hang.Fact is { } fact && telling.PartOf(hang.Id) is { } part
            ? telling.Phrases.Say(Phrase.Why.Unknown,
                ("fact", $"{Sentence.Capital(Naming.Part(part, telling.Phrases))}, {Naming.Reading(fact.Kind)}"),
                ("state", telling.Phrases[State(hang)]))
            : Question(hang.Id, telling))
        .Distinct();

    private static string State(Hang hang) => hang.Near ? hang.Fact!.Clash ? Phrase.Why.Clash : Phrase.Why.Near
        : hang.Fact!.SaidHidden || hang.Fact.Sight == Sight.Hidden ? Phrase.Why.Hidden
        : hang.Fact.Sight == Sight.NotBegun ? Phrase.Why.NotBegun
        : Phrase.Why.NotLooked;

    private static string Question(FactId id, Telling telling)
    {
        var part = telling.PartOf(id);
        return telling.Walk.Book.Vocabulary.Disciplines.FirstOrDefault(discipline =>
            FactId.Code(discipline.Name) == id) is { } discipline ? telling.Phrases.Of(discipline.Ask)
            : part is null ? id.Reading
            : id.Reading == FactId.Whole ? telling.Phrases.Of(part.Kind.AskWhole)
            : telling.Phrases.Of(part.Kind.AskPresence);
    }

    private static IEnumerable<string> Members(Entry entry, Telling telling) => entry.Checks.Count < 2 ? [] : entry.Checks.Select(check =>
    {
        var test = Evidence.Of(check).Test;
        var found = test is null ? "" : Tested.Found(test, telling);
        var line = found.Length == 0 ? "" : Items.Line(Tested.At(test!, telling), telling);
        return $"{Naming.Member(entry, check)} {telling.Phrases["result." + Keys.Of(check.Result)]}"
            + $"{(found.Length > 0 ? ", " + found : "")}{(line.Length > 0 ? $" ({line})" : "")}";
    });
}
