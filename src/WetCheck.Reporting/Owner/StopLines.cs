namespace WetCheck.Reporting;

/// <summary>When the owner says stop: one line for each Stop, each cover, each other trade.</summary>
internal static class StopLines
{
    public static IEnumerable<string> Of(Listing list)
    {
        var phrases = list.Phrases;
        var open = list.Groups.SelectMany(group => group.Items).Where(item => item.Mark is Mark.Stop or Mark.Correction).ToList();
        foreach (var stop in open.Where(item => item.Mark == Mark.Stop))
        {
            yield return phrases.Say(Phrase.Owner.StopIf, ("numbers", stop.Number));
        }

        foreach (var cover in open.Where(item => item.Mark == Mark.Correction && Trade(item, phrases) is null)
            .GroupBy(item => item.Before.TrimEnd('.')))
        {
            yield return cover.Key == phrases[Phrase.Before.Hidden].TrimEnd('.')
                ? phrases.Say(Phrase.Owner.HiddenIf, ("numbers", Either(cover, phrases)))
                : phrases.Say(Phrase.Owner.CoverIf, ("before", cover.Key), ("numbers", Either(cover, phrases)));
        }

        foreach (var trade in open.Where(item => item.Mark == Mark.Correction && Trade(item, phrases) is not null)
            .GroupBy(item => Trade(item, phrases)!))
        {
            yield return phrases.Say(Phrase.Owner.TradeIf, ("trade", trade.Key), ("numbers", Either(trade, phrases)));
        }
    }

    private static string Either(IEnumerable<Item> items, Phrases phrases) =>
        phrases.List([.. items.Select(item => item.Number)], Phrase.Say.Or);

    /// <summary>Null for the setter.</summary>
    private static string? Trade(Item item, Phrases phrases) => phrases.Find("owner.trade-" + item.Entry.Rule.WorkOf);
}
