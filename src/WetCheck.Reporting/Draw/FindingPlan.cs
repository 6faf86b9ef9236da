using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The small plan of a list: the numbers of what is to fix and to read again stand where the faults are.</summary>
internal static class FindingPlan
{
    private const double Most = 64;

    /// <summary>Proportions of a floor nobody has measured; the drawing says that it isn't to scale.</summary>
    private static readonly FloorPlan s_anyFloor = Rectangle(60, 36);

    /// <param name="name">Of the drawing on its page.</param>
    /// <returns>Null where no number has a place.</returns>
    public static string? Of(Walk walk, Phrases phrases, string name)
    {
        var says = new DrawSays(new PanSays(phrases, walk.Book, walk.Job.Metric == true));
        var isKnown = walk.Floor.Outline.Count > 0;
        var floor = isKnown ? walk.Floor : s_anyFloor;
        var plan = new PlanBase(floor, says, Most);
        var placed = walk.Entries.Where(entry => entry.Result is Result.Correction or Result.ReadAgain)
            .Select(entry => (entry.Number, Spot: FindingSpot.Of(entry, floor, plan))).Where(one => one.Spot is not null).ToList();
        if (placed.Count == 0)
        {
            return null;
        }

        plan.Walls();
        plan.Drain();
        plan.Names();
        foreach (var together in placed.GroupBy(one => one.Spot!.Value))
        {
            foreach (var (number, at) in together.Select((one, at) => (one.Number, at)))
            {
                plan.Canvas.Label(number, together.Key + (Beside(number) * ((at + 1) / 2 * (at % 2 == 0 ? 1 : -1))),
                    isBold: true, size: Lettering.Number);
            }
        }

        var told = placed.Select(one => phrases.Say(Phrase.Draw.Number, ("number", one.Number), ("place", Place(walk, one.Number, says))));
        return plan.Canvas.Svg(name, phrases[isKnown ? Phrase.Draw.NumbersTitle : Phrase.Draw.NumbersNotToScale],
            [phrases[Phrase.Draw.PlanTold], .. told], isKnown ? plan.Bar : plan.NotToScale, isAlone: false);
    }

    /// <summary>Numbers of one wall stand side by side along it: upright at the left and the right, across elsewhere.</summary>
    private static Mm Beside(string number) =>
        number.EndsWith("-B", StringComparison.Ordinal) || number.EndsWith("-D", StringComparison.Ordinal)
        ? new Mm(0, Lettering.Number + 2) : new Mm(15, 0);

    private static string Place(Walk walk, string number, DrawSays says)
    {
        var part = walk.Entries.First(entry => entry.Number == number).Worst.Part;
        return part.Place is { } place ? says.Phrases.Of(place.Say) : says.Phrases.Of(part.Kind.One);
    }

    private static FloorPlan Rectangle(double width, double depth)
    {
        Spot[] corners = [new(0, 0), new(width, 0), new(width, depth), new(0, depth)];
        return new FloorPlan(corners,
        [
            new("entry", corners[0], corners[1]), new("left", corners[3], corners[0]),
                new("back", corners[2], corners[3]), new("right", corners[1], corners[2]),
        ], null, null);
    }
}
