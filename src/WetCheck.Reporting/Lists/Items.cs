using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Puts an entry into words.</summary>
internal static class Items
{
    private const int FoundAtMost = 4;

    public static Item Of(Entry entry, Telling telling)
    {
        var phrases = telling.Phrases;
        var worst = entry.Worst;
        var evidence = Evidence.Of(worst);
        var fact = evidence.Test?.Fact;
        var cited = Says.Of(entry.Rule, evidence.Side, telling);
        var filled = RuleText.For(entry, telling);
        var isOver = evidence.Test is not null && Short.IsOver(evidence.Test);
        return new Item(
            entry.Number,
            MarkOf(entry),
            entry.Paper == Paper.Correction,
            Naming.Place(worst.Part, phrases),
            Sentence.Capital(Naming.Parts([.. entry.Checks.Select(check => check.Part)], phrases)),
            filled.Name,
            phrases.Find("work." + entry.Rule.WorkOf) ?? entry.Rule.WorkOf,
            FoundIn(entry, telling),
            entry.Paper != Paper.None && evidence.Test is not null && Tested.IsPlanned(evidence.Test),
            entry.Result == Result.ReadAgain ? Again.By(fact, telling) : Counted(evidence.Test, telling),
            evidence.Test is null ? "" : Limit.Should(evidence.Test, telling),
            evidence.Test is null ? "" : Limit.Brief(evidence.Test, telling),
            evidence.Test is null ? "" : OnTape.Of(evidence.Test, telling),
            evidence.Test is null || entry.Result == Result.ReadAgain ? "" : Short.By(evidence.Test, telling),
            isOver,
            filled.Why,
            entry.Result == Result.ReadAgain ? Again.Do(fact, telling) : filled.Fix,
            Before.When(entry.Rule, fact, evidence.Test?.Of ?? worst.Part, telling),
            Says.Line(cited, phrases, most: 2),
            Says.Line(cited.Select(source => source with { SeenIn = null }), phrases, most: 1),
            [.. entry.Also.Select(also => also.Number)],
            Line((evidence.Test is null ? null : Tested.At(evidence.Test, telling)) ?? telling.LineOf(worst.Part), telling),
            entry);
    }

    /// <summary>Of several parts the worst first: "2-1/8" and 1-3/4" below the rough curb".</summary>
    public static string FoundIn(Entry entry, Telling telling)
    {
        var found = entry.Same
            .Select(check => Evidence.Of(check).Test)
            .OfType<Measured>()
            .Select(test => Tested.Found(test, telling))
            .Where(found => found.Length > 0)
            .ToList();
        return found.Count <= FoundAtMost
            ? SharedEnd.List(found, telling.Phrases)
            : SharedEnd.List([.. found.Take(FoundAtMost - 1)], telling.Phrases) + ", "
                + telling.Phrases.Count(Phrase.Say.More, found.Count - FoundAtMost + 1);
    }

    /// <summary>Where the reading stands; where it would stand when there is none.</summary>
    public static At? Place(Fact fact, Telling telling) => fact.Counted?.At
        ?? fact.From.Select(from => Place(from, telling)).FirstOrDefault(at => at is not null);

    public static string Line(At? at, Telling telling)
    {
        if (at is null or { Line: 0 })
        {
            return "";
        }

        var line = at.Line.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return at.File == telling.Job.File || at.File.Length == 0
            ? telling.Phrases.Say(Phrase.Say.Line, ("line", line))
            : telling.Phrases.Say(Phrase.Say.LineOf, ("file", at.File), ("line", line));
    }

    private static string Counted(Measured? test, Telling telling) => string.Join(", ", (test?.Counted ?? [])
        .Where(counted => counted.Fact != test!.Fact && counted.Fact.Counted is not null)
        .Select(counted => telling.Phrases.Say(
            counted.Fact.IsPlanned ? Phrase.Say.CountedPlan : Phrase.Say.Counted,
            ("reading", Naming.Reading(counted.Fact.Kind)),
            ("value", Amount(counted.Fact, telling)))));

    /// <summary>Of a height only the number: its datum is in the reading's name.</summary>
    public static string Amount(Fact fact, Telling telling) => fact.Counted?.Value is ReadingValue.OfAmount amount
        ? Found.Stretch(amount.Amount, amount.Unit, telling)
        : Found.Of(fact, telling);

    private static Mark MarkOf(Entry entry) => entry.Result switch
    {
        Result.Correction => entry.Severity == Severity.Stop ? Mark.Stop : Mark.Correction,
        Result.ReadAgain => Mark.ReadAgain,
        Result.ToCheck => Mark.ToCheck,
        Result.HiddenNow => Mark.HiddenNow,
        _ => Mark.None,
    };
}
