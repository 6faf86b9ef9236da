namespace WetCheck.Reporting;

/// <summary>An entry in four lines: number, place, what / found, should be / do / before what, who says so, line.</summary>
internal static class EntryText
{
    private const int Lines = 4;

    /// <summary>Says all it can in four lines; what is left out stands in <c>why</c>.</summary>
    public static IReadOnlyList<string> Of(Item item, Phrases phrases)
    {
        IReadOnlyList<string> leanest = [];
        for (var plenty = Plenty.All; plenty >= Plenty.Least; plenty--)
        {
            foreach (var apart in new[] { true, false })
            {
                leanest = Laid(item, phrases, plenty, apart);
                if (leanest.Count <= Lines)
                {
                    return leanest;
                }
            }
        }

        return leanest;
    }

    public static string Title(Item item, Phrases phrases)
    {
        var title = phrases.Say(item.OnPaper ? Phrase.Say.TitleOnPaper : Phrase.Say.Title, ("place", item.Place), ("what", item.What));
        return item.Work.Length == 0 ? title : $"{Sentence.Closed(title)} {item.Work}";
    }

    /// <summary>"Found 2-1/2" above the rough curb. Should be 3" or more. Short by 1/2"."</summary>
    public static string Measured(Item item, Phrases phrases) => Measured(item, phrases, Plenty.All);

    /// <summary>"Before the boards. IRC 2021 P2709.2, second-hand; also 222."</summary>
    public static string End(Item item, Phrases phrases) => End(item, phrases, Plenty.All);

    private static string Measured(Item item, Phrases phrases, Plenty plenty) => Sentence.Joined(
        FoundText(item, phrases, counted: plenty >= Plenty.Counted),
        item.Should.Length == 0 ? "" : phrases.Say(Phrase.Say.Should, ("limit", plenty >= Plenty.WholeLimit ? item.Should : item.Brief)),
        plenty < Plenty.Short || item.Short.Length == 0
            ? "" : phrases.Say(item.IsOver ? Phrase.Say.Over : Phrase.Say.Short, ("short", item.Short)));

    private static IReadOnlyList<string> Laid(Item item, Phrases phrases, Plenty plenty, bool apart)
    {
        var margin = new string(' ', Column.Indent);
        var told = Sentence.Joined(
            Measured(item, phrases, plenty),
            plenty >= Plenty.WholeFix ? item.Do : plenty >= Plenty.Sentence ? Sentence.First(item.Do) : Sentence.Clause(item.Do));
        var end = End(item, phrases, plenty);
        var title = Column.Wrap(Title(item, phrases), Column.Numbered(item.Number));
        IReadOnlyList<string> text = apart && told.Length > 0
            ? [.. Column.Wrap(told, margin), .. Column.Wrap(end, margin)]
            : Column.Wrap(Sentence.Joined(told, end), margin);

        // The line stands last, where the eye is; beside the title only where nothing else would fit.
        return plenty > Plenty.Least || Column.HasRoom(text, item.Line) || !Column.HasRoom(title, item.Line)
            ? [.. title, .. Column.WithEnd(text, item.Line)]
            : [.. Column.WithEnd(title, item.Line), .. text];
    }

    /// <summary>That a Stop comes first is said by its heading.</summary>
    private static string End(Item item, Phrases phrases, Plenty plenty)
    {
        var says = plenty >= Plenty.AllSources ? item.Says : item.SaysBrief;
        var also = item.Also.Count == 0 ? "" : phrases.Say(Phrase.Say.Also, ("numbers", Numbers.Few(item.Also, phrases)));
        return Sentence.Joined(item.Mark == Mark.Stop ? "" : item.Before, Sentence.Closed(also.Length == 0 ? says : $"{says}; {also}"));
    }

    private static string FoundText(Item item, Phrases phrases, bool counted)
    {
        var found = counted && item.Counted.Length > 0
            ? phrases.Say(Phrase.Say.Counts, ("found", item.Found), ("counted", item.Counted)) : item.Found;
        return found.Length == 0 ? "" : phrases.Say(item.Planned ? Phrase.Say.Planned : Phrase.Say.Found, ("found", found));
    }

    /// <summary>What falls away first where there is no room, last named first.</summary>
    private enum Plenty { Least, Sentence, WholeLimit, WholeFix, Counted, Short, AllSources, All = AllSources }
}
