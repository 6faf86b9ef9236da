using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Signs, causes and tests of old work in one language.</summary>
internal sealed class TearoutSays(Walk walk, string language)
{
    private readonly Telling _telling = new(walk, new Phrases(walk.Book, language));

    public Phrases Phrases => _telling.Phrases;

    public Telling Telling => _telling;

    /// <summary>"Old liner, falls: lies flat".</summary>
    public string Sign(Sign sign) =>
        $"{Sentence.Capital(Naming.Part(sign.Part, Phrases))}, {Naming.Reading(sign.Fact.Kind)}: {Found.Of(sign.Fact, _telling)}";

    /// <summary>"line 12", where it was typed.</summary>
    public string Line(Sign sign) =>
        sign.Fact.Counted is { } reading
        ? Phrases.Say(Phrase.Say.Line,
        ("line", reading.At.Line.ToString(System.Globalization.CultureInfo.InvariantCulture))) : "";

    public string Signs(IEnumerable<Sign> signs) =>
        string.Join("; ",
        signs.Select(sign => Line(sign) is { Length: > 0 } line ? $"{Sign(sign)} ({line})" : Sign(sign)));

    public string Missing(CauseSeen cause) =>
        string.Join("; ",
        cause.Missing.Select(need => Sentence.Capital(Conditions.Say(need, null, walk.Book, Phrases))));

    public string Dangers(CauseSeen cause) =>
        cause.Cause.Dangers.Count == 0 ? ""
        : Phrases.Say(Phrase.Tearout.Dangerous, ("what", Phrases.List([.. cause.Cause.Dangers.Select(Danger)])));

    public string Danger(string key) => Phrases["tearout.danger-" + key.Replace(' ', '-')];

    public IReadOnlyList<string> Sources(IEnumerable<string> rows) =>
        [.. rows.SelectMany(row => walk.Book.Sources.GetValueOrDefault(row, []))
            .Select(entry => new Cited(entry, null, null).Say(Phrases)).Distinct()];

    /// <summary>"214 liner too low", of each rule that keeps the new work from it; a local change may have switched it off.</summary>
    public IEnumerable<string> Guards(IEnumerable<string> ids) =>
        ids.Distinct().Order(StringComparer.Ordinal).Select(walk.Book.Rule).OfType<Rule>()
        .Select(rule => $"{Naming.Digits(rule)} {rule.In(language).One}");

    /// <summary>The gate before the first blow: year, what is broken, and the usual cautions. It shows whatever the stop.</summary>
    public IEnumerable<string> Gate(TearoutReport report)
    {
        var job = walk.Job.Parts.FirstOrDefault(part => part.Part.Above is null);
        yield return Read(job, "built") is { } built ? Phrases.Say(Phrase.Tearout.Built, ("year", built))
            : Phrases[Phrase.Tearout.BuiltUnknown];
        yield return Read(job, "disturbs") is { } area ? Phrases.Say(Phrase.Tearout.Breaks, ("area", area))
            : Phrases[Phrase.Tearout.BreaksUnknown];
        foreach (var rule in report.Gate)
        {
            yield return $"{Sentence.Capital(rule.In(language).One)}. {rule.In(language).Two}";
        }

        yield return Phrases[Phrase.Tearout.Who];
    }

    private string? Read(JobPart? part, string reading) =>
        part?.Of(reading) is { Count: > 0 } all && all[^1].Value is ReadingValue.OfAmount amount
        && part.Part.Kind.Find(reading) is { } kind
        ? Found.Of(amount, kind, _telling)
        : null;
}
