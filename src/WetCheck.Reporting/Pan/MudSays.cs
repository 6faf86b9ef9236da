using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Mortar, bags and water in words, in one language and the units of the job.</summary>
internal sealed record MudSays(PanSays Pan, MudReport Mud)
{
    private readonly MudFigures _figures = new(Pan.Phrases, Pan.Metric);

    private Phrases Phrases => Pan.Phrases;

    private Materials Materials => Pan.Book.Materials;

    public IEnumerable<string> Floor()
    {
        yield return Phrases.Say(Phrase.Mud.Area, ("area", _figures.Area(Mud.Area!.Value)));
        if (Mud.Fall is { } fall && Mud.Rim is { } rim)
        {
            yield return Phrases.Say(Phrase.Mud.Fall, ("rim", Pan.Length(rim)), ("volume", _figures.Volume(fall)));
        }
        else
        {
            yield return Phrases[Phrase.Mud.NoFall];
        }
    }

    public IEnumerable<string> Layers(MudWay way)
    {
        foreach (var layer in way.Layers)
        {
            yield return Phrases.Say(layer.HasFall ? Phrase.Mud.LayerFall : Phrase.Mud.Layer,
                ("layer", Layer(layer)), ("thin", _figures.Lengths(layer.Thinnest)),
                    ("thick", _figures.Lengths(layer.Thickest)), ("amount", Amount(layer.Amount)),
                ("mean", Spread(layer.Amount)));
        }

        if (way.Layers.Count > 1)
        {
            yield return Phrases.Say(Phrase.Mud.Together, ("amount", Amount(way.Whole)), ("mean", Spread(way.Whole)));
        }
        else if (way.Layers.Count == 0)
        {
            yield return Phrases[Phrase.Mud.NoBed];
        }
    }

    /// <summary>A size to a line, whole bags first; layers apart, since they are placed on different days.</summary>
    public IEnumerable<string> Bags(MudWay way)
    {
        foreach (var (bag, at) in way.Whole.Bags.Select((bag, at) => (bag, at)))
        {
            var said = Phrases.Say(Phrase.Mud.Bag, ("bag", _figures.Bag(bag.Bag)),
                ("whole", _figures.Counts(bag.Whole)), ("exact", _figures.Counts(bag.Exact, 2)));
            yield return way.Layers.Count < 2 ? said + "." : Phrases.Say(Phrase.Mud.BagLayers, ("bag", said),
                ("layers", Phrases.List([.. way.Layers.Select(layer =>
                    Phrases.Say(Phrase.Mud.BagLayer, ("layer", Phrases[$"mud.{layer.Key}"]),
                    ("count", _figures.Counts(layer.Amount.Bags[at].Whole))))])));
        }

        if (way.Whole.Bags.Count > 0)
        {
            yield return Phrases[Phrase.Mud.NoWaste];
        }

        if (Materials.Waste is { } waste && way.Whole.Bags.Count > 0)
        {
            yield return Phrases.Say(Phrase.Mud.Waste, ("waste", Phrases.Show.Of(waste.Number, Unit.Percent)), ("doubt", Doubt(waste.Row)),
                ("bags", Phrases.List([.. way.Whole.Bags.Where(bag => bag.WithWaste is not null)
                    .Select(bag =>
                    Phrases.Say(Phrase.Mud.BagWaste, ("bag", _figures.Weight(bag.Bag.Pounds)),
                    ("count", _figures.Counts(bag.WithWaste!.Value))))])));
        }
    }

    public IEnumerable<string> Mixes() => Materials.Mixes.Select(mix =>
        Phrases.Say(Phrase.Mud.Mix, ("use", Sentence.Capital(Phrases.Of(mix.Use))), ("sand", Phrases.Of(mix.Sand)),
            ("doubt", Doubt(mix.Row))));

    public string Instead(MudWay way) => Phrases.Say(Phrase.Mud.As, ("way", Phrases[$"mud.{Key(way.As)}"]), ("what", way.Layers.Count == 0
        ? Phrases[Phrase.Mud.NoBed]
        : Phrases.Say(way.Layers.Count > 1 ? Phrase.Mud.TwoLayers : Phrase.Mud.OneLayer, ("amount", Amount(way.Whole)),
            ("mean", Spread(way.Whole)))));

    public IEnumerable<string> Water()
    {
        if (Mud.Area is not null && Materials.Water is { } water)
        {
            var inches = Pan.Metric ? 10 / 25.4 : 1;
            yield return Phrases.Say(Phrase.Mud.Inch, ("depth", Pan.Length(inches)),
                ("each", _figures.Spread(water.Number * MudFigures.Exact(inches), 2)));
        }

        if (Mud.Water is { Pounds: { } pounds } stands && Materials.Water is { } each)
        {
            yield return Phrases.Say(Phrase.Mud.Stands, ("depth", Pan.Length(stands.Depth)),
                ("each", _figures.Spread(each.Number * MudFigures.Exact(stands.Depth), 2)),
                ("weight", _figures.Weight(MudFigures.Exact(pounds))), ("volume", _figures.Water(stands.Volume)));
        }
    }

    public IEnumerable<string> Sources() => Materials.Rows.Select(one => one.Row).Distinct()
        .SelectMany(row => Pan.Book.Sources.GetValueOrDefault(row, []))
            .Select(entry => new Cited(entry, null, null).Say(Phrases) + ".").Distinct();

    public static string Key(BuiltAs built) => built switch
    {
        BuiltAs.LinerUnderMortar => "liner",
        BuiltAs.BondedMembrane => "bonded",
        _ => "tray",
    };

    private string Layer(MudLayer layer) => Sentence.Capital(Phrases[$"mud.{layer.Key}"]);

    private string Amount(MudAmount amount) => amount.Pounds is { } pounds
        ? Phrases.Say(Phrase.Mud.Amount, ("volume", _figures.Volumes(amount.Volume)), ("weight", _figures.Weights(pounds)))
        : _figures.Volumes(amount.Volume);

    /// <summary>On a square foot, in the mean.</summary>
    private string Spread(MudAmount amount) => amount.Pounds is { } pounds && Mud.Area is { } area
        ? _figures.Spreads(new Interval(pounds.Lo * 144 / MudFigures.Exact(area), pounds.Hi * 144 / MudFigures.Exact(area)))
        : Phrases[Phrase.Value.Nothing];

    private string Doubt(string row) =>
        Pan.Book.Sources.GetValueOrDefault(row, []) is [var entry, ..] ? Cited.Doubt(entry.Status, Phrases) : "";
}
