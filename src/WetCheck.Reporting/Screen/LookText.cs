namespace WetCheck.Reporting;

/// <summary>Looks as they stand on a screen: the first with how to look, the others with their question.</summary>
internal static class LookText
{
    public static IEnumerable<string> Of(Listing list, bool all)
    {
        var shown = all ? list.Looks : [.. list.Looks.Take(Listing.LooksShown)];
        if (shown.Count == 0)
        {
            yield break;
        }

        yield return list.Cover.Length == 0
            ? list.Phrases[Phrase.Group.LookNext]
            : list.Phrases.Say(Phrase.Group.LookNextBefore, ("before", list.Cover));
        for (var i = 0; i < shown.Count; i++)
        {
            if (i == 1)
            {
                yield return list.Phrases[Phrase.Group.Then];
            }

            foreach (var line in Look(shown[i], withHow: i == 0))
            {
                yield return line;
            }
        }

        if (shown.Count < list.Looks.Count)
        {
            var rest = list.Looks.Count - shown.Count;
            yield return new string(' ', Column.Indent) + list.Phrases.Say(
                Phrase.Look.Rest,
                ("count", rest.ToString(System.Globalization.CultureInfo.InvariantCulture)),
                ("command", $"wetcheck walk {list.Command} --all"));
        }
    }

    private static IReadOnlyList<string> Look(LookItem look, bool withHow)
    {
        var number = Column.Numbered(look.Number);
        if (look.Title.Length > 0)
        {
            var told = Column.Wrap(Sentence.Joined(look.Detail, look.Ask), new string(' ', Column.Indent));
            return [.. Column.Wrap(look.Title, number), .. Column.WithEnd(told, look.Line)];
        }

        return Column.Wrap(withHow ? Sentence.Joined(look.Ask, look.How) : look.Ask, number);
    }
}
