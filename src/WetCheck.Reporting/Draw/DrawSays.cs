namespace WetCheck.Reporting;

/// <summary>What stands on a drawing, in one language and the units of the job.</summary>
internal sealed record DrawSays(PanSays Pan)
{
    public Phrases Phrases => Pan.Phrases;

    public string Entry => Phrases.Say(Phrase.Draw.Entry, ("letter", Letters("entry")));

    /// <summary>Feet and inches from one foot on, inches below; millimetres in a metric job.</summary>
    public string Size(double inches) => Pan.Metric ? Pan.Length(inches) : Show.FeetAndInches((decimal)Math.Round(inches, 9));

    /// <summary>In one form, for there is little room: "1/4" per ft", "1:80".</summary>
    public string Fall(double slope)
    {
        var said = Pan.Fall(slope);
        var also = said.IndexOf(" (", StringComparison.Ordinal);
        return also < 0 ? said : said[..also];
    }

    /// <summary>"Left wall (B)".</summary>
    public string Wall(string name)
    {
        var letters = Letters(name);
        return letters.Length > 0
            ? Phrases.Say(Phrase.Draw.Wall, ("wall", Sentence.Capital(Pan.Side(name))), ("letter", letters))
            : Sentence.Capital(Pan.Side(name));
    }

    private string Letters(string name)
    {
        var dash = name.LastIndexOf('-');
        var plain = dash > 0 && int.TryParse(name[(dash + 1)..], out _) ? name[..dash] : name;
        return Pan.Book.Vocabulary.Places.FirstOrDefault(place => place.Name == plain)?.Letters ?? "";
    }
}
