using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Where on a plan the number of an entry stands.</summary>
internal static class FindingSpot
{
    private const double Inside = 4;

    /// <returns>Null where it is about no place of the floor: the walls as a whole, the papers, the tile.</returns>
    public static Mm? Of(Entry entry, FloorPlan floor, PlanBase plan)
    {
        var part = entry.Worst.Part;
        return part.Place?.Name is { } place ? OfPlace(place, floor, plan) : part.Kind.Name switch
        {
            "drain" or "drain top" => Drain(floor, plan),
            "curb" => Wall("entry", floor, plan, 2),
            "receptacle" => Wall("entry", floor, plan, -18),
            "pre-slope" or "liner" or "bed" or "floor" or "tray" or "shower" => Floor(floor, plan),
            _ => null,
        };
    }

    private static Mm? OfPlace(string place, FloorPlan floor, PlanBase plan) => place switch
    {
        "left" or "back" or "right" or "entry" => Wall(place, floor, plan, Inside),
        "curb inside" => Wall("entry", floor, plan, Inside),
        "curb top" => Wall("entry", floor, plan, 0),
        "curb outside" => Wall("entry", floor, plan, -Inside),
        "left-back" => Corner(floor, plan, at => at.X - at.Y),
        "right-back" => Corner(floor, plan, at => -at.X - at.Y),
        "left jamb" => Corner(floor, plan, at => at.X + at.Y),
        "right jamb" => Corner(floor, plan, at => at.Y - at.X),
        "floor" => Floor(floor, plan),
        _ => null,
    };

    /// <summary>Beside the middle of the longest wall of a side, inwards; below zero outside.</summary>
    private static Mm? Wall(string name, FloorPlan floor, PlanBase plan, double inward)
    {
        var side = floor.Sides.Where(side => side.Name == name
            || side.Name.StartsWith(name + "-", StringComparison.Ordinal) && char.IsDigit(side.Name[^1]))
            .MaxBy(side => (plan.At(side.To) - plan.At(side.From)).Length);
        if (side is null)
        {
            return null;
        }

        var (from, to) = (plan.At(side.From), plan.At(side.To));
        return ((from + to) * 0.5) - ((to - from).Unit.Turned * inward);
    }

    /// <summary>Beside the outermost corner, toward the drain.</summary>
    private static Mm? Corner(FloorPlan floor, PlanBase plan, Func<Spot, double> outermost)
    {
        var corner = plan.At(floor.Outline.MinBy(outermost)!);
        return corner + ((Floor(floor, plan) - corner).Unit * (Inside + 3));
    }

    private static Mm Drain(FloorPlan floor, PlanBase plan) => floor.Drain is { } drain ? plan.At(drain) : Floor(floor, plan);

    private static Mm Floor(FloorPlan floor, PlanBase plan) =>
        plan.At(new Spot(floor.Outline.Average(at => at.X), floor.Outline.Average(at => at.Y)));
}
