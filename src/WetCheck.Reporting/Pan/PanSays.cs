using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Figures and names of a floor's falls, in one language and the units of the job.</summary>
/// <param name="Metric">Millimetres and 1:80; else sixty-fourths and so much per foot.</param>
internal sealed record PanSays(Phrases Phrases, RuleBook Book, bool Metric)
{
    public string Length(double inches, Rounding rounding = Rounding.Nearest) =>
        Phrases.Show.Of(Exact(inches), Metric ? Unit.Millimetre : Unit.Inch, rounding);

    public string Fall(double slope, Rounding rounding = Rounding.Nearest) =>
        Phrases.Show.Of(Exact(slope), Metric ? Unit.RiseOverRun : Unit.InchPerFoot, rounding);

    public string Of(double number, Unit unit) => Phrases.Show.Of(Exact(number), unit);

    public string Place(Spot at) => Phrases.Say(Phrase.Value.Point, ("left", Length(at.X)), ("entry", Length(at.Y)));

    /// <summary>"back wall", "back wall 2".</summary>
    public string Side(string name)
    {
        var known = Book.Vocabulary.Places.FirstOrDefault(place => place.Name == name);
        if (known is not null)
        {
            return Phrases.Of(known.Say);
        }

        if (name == "ridge")
        {
            return Phrases[Phrase.Pan.Ridge];
        }

        var dash = name.LastIndexOf('-');
        return dash > 0 ? $"{Side(name[..dash])} {name[(dash + 1)..]}" : name;
    }

    public string Alike(IEnumerable<string> names) => Phrases.List([.. names]);

    public string Corner(PanFold fold) =>
        fold.Corner.Length > 0 ? Side(fold.Corner) : Phrases.Say(Phrase.Pan.Corner, ("at", Place(fold.At)));

    public string Measure(PanLimits limits) => limits.AlongFolds ? Phrases[Phrase.Pan.Along] : Phrases[Phrase.Pan.Square];

    public string Taken(DrainTaken taken) => taken switch
    {
        DrainTaken.Point => Phrases[Phrase.Pan.Point],
        DrainTaken.Grate => Phrases[Phrase.Pan.Grate],
        DrainTaken.Channel => Phrases[Phrase.Pan.Channel],
        _ => Phrases[Phrase.Pan.ChannelAtWall],
    };

    /// <summary>"1/4" per ft (2.1%) to 1/2" per ft (4.2%), held to inches".</summary>
    public string Limits(PanLimits limits)
    {
        var said = Phrases.Say(Phrase.Pan.Limits, ("least", Phrases.Show.Of(limits.Least)), ("most", Phrases.Show.Of(limits.Most)));
        return limits.Held.Count == 0 ? said
            : Phrases.Say(Phrase.Pan.Held, ("limits", said),
            ("held", Phrases.List([.. limits.Held.Select(choice => Phrases.Of(choice.Say))], Phrase.Say.Or)));
    }

    public IReadOnlyList<string> Sources(PanLimits limits)
    {
        var entries =
            limits.Rows.SelectMany(row => Book.Sources.GetValueOrDefault(row, []))
            .Where(entry => entry.Of is null || limits.Codes.Contains(entry.Of));
        return [.. entries.Select(entry => new Cited(entry, null, null).Say(Phrases)).Distinct()];
    }

    /// <summary>What is not known, and what to write on which line.</summary>
    public string Missing(PanMissing missing)
    {
        var dot = missing.Line.IndexOf('.', StringComparison.Ordinal);
        var write = dot < 0
            ? Phrases.Say(Phrase.Pan.Write, ("line", missing.Line), ("write", missing.Write))
            : Phrases.Say(Phrase.Pan.WriteBelow, ("section", missing.Line[..dot]), ("line", missing.Line[(dot + 1)..]),
                ("write", missing.Write));
        return $"{Phrases["pan.missing-" + missing.Key]} {write}";
    }

    public string Way(PanWay way) => Phrases.Say("pan.way-" + way.Kind, [.. way.Figures.Select(figure => (figure.Slot, figure switch
    {
        PanFigure.Length length => Length(length.Inches),
        PanFigure.Fall fall => Fall(fall.Slope),
        PanFigure.Place place => Place(place.At),
        PanFigure.Side side => Side(side.Name),
        _ => "",
    }))]);

    /// <summary>Nine decimals of an inch: what is left is rounding of the machine.</summary>
    private static Rational Exact(double number) => (decimal)Math.Round(number, 9);
}
