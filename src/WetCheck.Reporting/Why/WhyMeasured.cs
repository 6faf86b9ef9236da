using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What was found, as it was counted, what it should be, and by how much it misses.</summary>
internal static class WhyMeasured
{
    public static void Add(Labelled lines, Entry entry, Item item, Evidence evidence, Telling telling)
    {
        var (phrases, test) = (telling.Phrases, evidence.Test);
        if (item.Found.Length > 0)
        {
            lines.Add(item.Planned ? "planned" : "found",
                Sentence.Joined(Sentence.Closed(Sentence.Capital(item.Found)), Taken(test?.Fact, item.Line, telling)));
        }

        lines.Add("counted", [.. Derived(test?.Fact), .. Counted(test, telling)]);
        if (Sides.Differ(entry.Worst, telling))
        {
            lines.Add("should", Sides.Say(entry.Worst, telling));
        }
        else if (item.Should.Length > 0)
        {
            lines.Add("should", Sentence.Closed(Sentence.Capital(item.Should)));
        }

        lines.Add(item.IsOver ? "over" : "short",
            item.Short.Length == 0 ? ""
            : Sentence.Joined(Sentence.Closed(item.Short), CannotMiss(entry, test, telling)));
        if (entry.Result == Result.ReadAgain)
        {
            lines.Add("note", Again.Do(test?.Fact, telling));
        }

        lines.Add("on-paper", entry.Paper == Paper.Correction ? phrases[Phrase.Why.StillCheap] : "");
    }

    /// <summary>"Tape, JM, 2026-11-25, photo x.jpg (line 35)".</summary>
    private static string Taken(Fact? fact, string line, Telling telling)
    {
        var reading = fact?.Counted;
        var tool = reading?.Tool ?? fact?.Kind.Tool;
        var taken = string.Join(", ",
            new[] { reading is null || tool is null ? "" : Sentence.Capital(telling.Phrases.Of(tool.Say)),
            Cut.Name(reading?.By ?? ""), reading?.Date?.Split('T')[0] ?? "",
            reading?.Photo is { } photo ? telling.Phrases.Say(Phrase.Why.Photo, ("photo", Cut.Name(photo))) : "" }
            .Where(part => part.Length > 0));
        return Sentence.Closed(line.Length == 0 ? taken : taken.Length == 0 ? Sentence.Capital(line) : $"{taken} ({line})");
    }

    /// <summary>How a number was worked out that nobody read; of several ways the first that tells it.</summary>
    private static IEnumerable<string> Derived(Fact? fact)
    {
        for (var way = fact; way is { Counted: null }; way = way.Also)
        {
            if (way.Explained.Length > 0 && (way == fact || way.OnPaper is not Known.Nothing))
            {
                return [Sentence.Closed(Sentence.Capital(way.Explained))];
            }
        }

        return [];
    }

    private static IEnumerable<string> Counted(Measured? test, Telling telling) => (test?.Counted ?? [])
        .Where(counted => counted.Fact != test!.Fact && counted.Fact.Counted is not null)
        .Select(counted => (Fact: counted.Fact, Part: telling.PartOf(counted.Fact.Id)))
        .Select(counted => Sentence.Joined(
            counted.Part is null ? "" : Sentence.Capital(Naming.Part(counted.Part, telling.Phrases)) + ",",
            telling.Phrases.Say(
                counted.Fact.IsPlanned ? Phrase.Say.CountedPlan : Phrase.Say.Counted,
                ("reading", Naming.Reading(counted.Fact.Kind)),
                ("value", Items.Amount(counted.Fact, telling))),
            Items.Line(Items.Place(counted.Fact, telling), telling) is { Length: > 0 } line ? $"({line})." : ""));

    /// <summary>"A tape to 1/16" can't miss that."</summary>
    private static string CannotMiss(Entry entry, Measured? test, Telling telling)
    {
        return entry.Result == Result.Correction && test?.Fact is { ReadOnce: true, IsPlanned: false } fact
            && Again.Mark(fact, telling) is { } mark
            ? telling.Phrases.Say(Phrase.Why.CannotMiss, ("tool", mark.Tool), ("mark", mark.Smallest))
            : "";
    }
}
