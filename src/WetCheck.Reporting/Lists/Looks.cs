using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Puts a look into words.</summary>
internal static class Looks
{
    public static LookItem Of(Look look, Telling telling)
    {
        var phrases = telling.Phrases;
        var (title, detail) = Shown(look, telling);
        var tool = look.Reading?.Tool is { Marks.Count: > 0 } measuring ? phrases.Of(measuring.Say) : "";
        return new LookItem(
            look.Number,
            look.Paper == Paper.Short,
            title,
            detail,
            Ask(look, telling),
            look.Reading is { } reading ? phrases.Of(reading.How) : "",
            tool,
            Items.Line(look.At, telling),
            look);
    }

    /// <summary>"before the boards", where what is asked is hidden at a later stop; else empty.</summary>
    public static string Cover(Look look, Telling telling)
    {
        // A code or the method is asked of no part.
        if (look.Parts.Count == 0)
        {
            return "";
        }

        var layer = look.Reading?.LayerOf(look.Parts[0].Place);
        var hidden = telling.Job.Method?.Layers.FirstOrDefault(l => l.Name == layer)?.Hidden;
        return hidden is null ? "" : Before.Cover(look.Reading, look.Parts[0], telling);
    }

    /// <summary>The question as it stands on a list, its part in front of it.</summary>
    private static string Ask(Look look, Telling telling)
    {
        var phrases = telling.Phrases;
        var kind = look.Parts.Count > 0 ? look.Parts[0].Kind : null;
        if (look.Reading is { } reading && kind is not null)
        {
            return phrases.Say(Phrase.Look.Ask, ("part", Sentence.Capital(Naming.Parts(look.Parts, phrases))),
                ("ask", phrases.Of(reading.Ask)));
        }

        if (look.Fact == FactId.Method)
        {
            return phrases.Say(Phrase.Look.Method,
                ("methods", string.Join("; ",
                telling.Walk.Book.Vocabulary.Methods.Select(method => phrases.Of(method.Say)))));
        }

        return Discipline(look, telling) is { } discipline ? phrases.Of(discipline.Ask)
            : look.Fact.Reading == FactId.Whole && kind is not null
                ? phrases.Of(IsUnlisted(kind, telling) ? kind.AskPresence : kind.AskWhole)
            : Presence(look.Parts, phrases);
    }

    /// <summary>Of a list that is given at once, and of which nothing is given, all is asked.</summary>
    private static bool IsUnlisted(PartKind kind, Telling telling) =>
        kind.WholeWhenGiven && !telling.Job.Parts.Any(part => part.Part.Kind == kind && !part.Part.IsOther);

    private static string Presence(IReadOnlyList<Part> parts, Phrases phrases)
    {
        var kinds = parts.Select(part => part.Kind).Distinct().ToList();
        if (kinds.Count == 1)
        {
            return phrases.Of(kinds[0].AskPresence);
        }

        var names = parts.Select(part => part.Kind.IsList || part.Place is null ? Several(part.Kind, phrases)
            : phrases.Of(part.Place.Say)).Distinct();
        return phrases.Say(Phrase.Look.Presence, ("parts", string.Join(", ", names)));
    }

    private static string Several(PartKind kind, Phrases phrases) =>
        phrases.Of(kind.Several) is { Length: > 0 } several && kind.IsList ? several : phrases.Of(kind.One);

    private static Discipline? Discipline(Look look, Telling telling) =>
        telling.Walk.Book.Vocabulary.Disciplines.FirstOrDefault(discipline => FactId.Code(discipline.Name) == look.Fact);

    /// <summary>
    /// Of a look that decides between sides, or is short on paper: the first entry it stands for, with what is known of
    /// it.
    /// </summary>
    private static (string Title, string Detail) Shown(Look look, Telling telling)
    {
        var all = look.Settles.Concat(look.Bears).ToList();
        var shown = all.Where(entry => entry.Paper == Paper.Short || entry.Worst.IsShortUnless
            || (Sides.Differ(entry.Worst, telling) && Items.FoundIn(entry, telling).Length > 0)).ToList();
        if (shown.Count == 0
            || (Discipline(look, telling) is null && look.Paper != Paper.Short && !Decides(look, shown[0])
            && !IsWayOut(look, shown[0])))
        {
            return ("", "");
        }

        var entry = shown[0];
        var item = Items.Of(entry, telling);
        var paper = entry.Paper == Paper.Short ? ".short" : "";
        var title = look.Reading is not null && entry.Worst.IsShortUnless
            ? telling.Phrases.Say(Phrase.Look.ShortUnless, ("place", item.Place), ("what", item.What))
            : Discipline(look, telling) is { } discipline
            ? telling.Phrases.Say($"look.by-code{paper}", ("place", item.Place), ("what", item.What),
                ("discipline", telling.Phrases.Of(discipline.Say)))
            : telling.Phrases.Say($"look.open{paper}", ("place", item.Place), ("what", item.What));
        // The look bears the number of the first check it settles, which may be another.
        title = entry.Number == look.Number ? title : $"{entry.Number} {title}";
        var others = shown.Skip(1).Select(other => other.Number).Distinct().ToList();
        return (title, Sentence.Joined(
            item.Found.Length == 0 ? ""
                : telling.Phrases.Say(item.Planned ? Phrase.Say.Planned : Phrase.Say.Found,
                ("found", WithCounted(item, telling))),
            Sides.Differ(entry.Worst, telling) ? Sides.Say(entry.Worst, telling)
                : item.Should.Length == 0 ? "" : telling.Phrases.Say(Phrase.Say.Should, ("limit", item.Should)),
            others.Count == 0 ? "" : telling.Phrases.Say(Phrase.Look.Same, ("numbers", Numbers.Few(others, telling.Phrases)))));
    }

    public static string WithCounted(Item item, Telling telling) => item.Counted.Length == 0
        ? item.Found
        : telling.Phrases.Say(Phrase.Say.Counts, ("found", item.Found), ("counted", item.Counted));

    /// <summary>What is asked is the only way out of being short.</summary>
    private static bool IsWayOut(Look look, Entry entry) => look.Reading is not null && entry.Worst.IsShortUnless;

    /// <summary>The fact that is asked decides which version is in force.</summary>
    private static bool Decides(Look look, Entry entry) =>
        entry.Worst.Judgement.Hangs.Any(hang => hang.Id == look.Fact && hang.Phase == Phase.Version);
}
