using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Heights, what is asked of them and ways of water, in one language and the units of the job.</summary>
internal sealed record HeightSays(PanSays Pan)
{
    private Phrases Phrases => Pan.Phrases;

    public string Line(HeightLine line) =>
        line.Datum is null ? Told(line.Height, Plain) : Told(line.Height, inches => Signed(inches, line.Datum));

    /// <summary>"finished floor, all walls", "liner, left wall".</summary>
    public string Name(string key, IReadOnlyList<string> places)
    {
        var named = places.Where(place => place.Length > 0).ToList();
        return named.Count == 0 ? Phrases[$"heights.{key}"]
            : Phrases.Say(Phrase.Heights.Of, ("what", Phrases[$"heights.{key}"]),
                ("places", named.Count == 4 ? Phrases[Phrase.Heights.AllRound] : Pan.Alike(named.Select(Pan.Side))));
    }

    /// <summary>What a rule asks, and on the tape from where.</summary>
    public string Asked(HeightAsked asked)
    {
        var sources =
            asked.Rows.SelectMany(row => Pan.Book.Sources.GetValueOrDefault(row, []))
            .Where(entry => entry.Of is null || asked.Codes.Count == 0 || asked.Codes.Contains(entry.Of));
        return Phrases.Say($"heights.asked-{asked.Key}",
            ("least", Told(asked.Least, Plain)),
            ("datum", Datum(asked.Datum)),
            ("limit", Phrases.Show.Of(asked.Limit)),
            ("from", Datum(asked.LimitDatum)),
            ("sources", string.Join("; ", sources.Select(entry => new Cited(entry, null, null).Say(Phrases)).Distinct())));
    }

    public string Way(string key, WaterWay way, string datum) =>
        Phrases.Say(key, ("way", Way(way)), ("height", Told(way.Height, inches => Signed(inches, datum))));

    /// <summary>"over its edge, left wall".</summary>
    public string Way(WaterWay way) =>
        Phrases.Say($"heights.way-{way.Key}",
        ("place", way.Place.Length > 0 ? Pan.Side(way.Place) : Phrases[Phrase.Heights.AllRound]));

    public string Kinds(string kind) => Phrases.Of(Pan.Book.Vocabulary.Kind(kind)!.Several);

    private string Datum(string name) => Phrases.Of(Pan.Book.Vocabulary.Datums.First(datum => datum.Name == name).Say);

    private string Told(HeightTold height, Func<Rational, string> say)
    {
        if (height.IsApart)
        {
            return Phrases[Phrase.Heights.Apart];
        }

        var said = height.Is.AsRead switch
        {
            { IsPoint: true, Lo: { } at } => say(at),
            { Lo: { } low, Hi: { } high } => Phrases.Say(Phrase.Heights.Between, ("low", say(low)), ("high", say(high))),
            { Lo: { } low } => Phrases.Say(Phrase.Heights.AtLeast, ("low", say(low))),
            { Hi: { } high } => Phrases.Say(Phrase.Heights.AtMost, ("high", say(high))),
            _ => Phrases[Phrase.Heights.NotKnown],
        };
        return height.IsPlanned && !height.Is.IsUnknown ? Phrases.Say(Phrase.Heights.Planned, ("height", said)) : said;
    }

    private string Plain(Rational inches) => Phrases.Show.Of(inches, Unit);

    private string Signed(Rational inches, string datum) => Phrases.Show.Height(inches, Unit, Datum(datum));

    private Unit Unit => Pan.Metric ? Unit.Millimetre : Unit.Inch;
}
