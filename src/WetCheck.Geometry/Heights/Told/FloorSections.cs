using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The floor of a job as it can be drawn in section.</summary>
internal static class FloorSections
{
    public static FloorSection Of(IReadOnlyList<PartState> known, Standing told)
    {
        var liner = told.IsHere("liner");
        var zero = liner ? Standing.LinerZero : Standing.Zero;
        var plan = told.Falls.Outline;
        return new FloorSection(
            zero,
            liner,
            plan.Count == 0 ? null : plan.Max(at => at.Y) - plan.Min(at => at.Y),
            told.Falls.Drain?.Y - (plan.Count == 0 ? 0 : plan.Min(at => at.Y)),
            One(liner ? told.LinerAt("back") : told.Rim("back")),
            One(liner ? told.LinerAt("entry") : told.Rim("entry")),
            One(told.Between(zero, "floor substrate")),
            liner ? One(told.Between(zero, Standing.Zero)) : 0,
            told.IsHere("bed") ? One(told.Number("bed", "thickness")) : null,
            One(told.Number("tile", "floor adds")),
            One(Board(known)),
            One(told.Between(zero, "rough curb")),
            One(told.Between(zero, "finished threshold")),
            One(told.Number("curb", "width")),
            One(told.Between(zero, "room floor")),
            [.. known.Where(part => part.Kind == "liner side" && liner)
                .Select(part =>
                new SectionSide(part.Part.Place!.Name, Length(part.Part.Place.Name, told.Falls),
                One(told.AboveLiner(part.Facts.GetValueOrDefault("top")))))],
            [.. known.Where(part => part.Kind == "fastener" && liner && part.Exists != Tri.No && !part.Part.IsOther)
                .Select(part => (Place: part.Part.Place?.Name ?? "", Height: One(told.AboveLiner(part.Facts.GetValueOrDefault("height")))))
                .Where(nail => nail.Height is not null).Select(nail => new SectionNail(nail.Place, nail.Height!.Value))]);
    }

    private static HeightTold? Board(IReadOnlyList<PartState> known) =>
        known.FirstOrDefault(part => part.Kind == "board end" && part.Part.Place?.Name == "back")
            ?.Facts.GetValueOrDefault("bottom") is { OnPaper: Known.Number { Datum: null or "top of bed" } } bottom
            ? Standing.Told(bottom)
            : null;

    private static double? Length(string side, PanReport falls) => falls.Sides.FirstOrDefault(one => one.Name == side)?.Length;

    private static double? One(HeightTold? height) =>
        height is { IsApart: false, Is.AsRead: { IsPoint: true, Lo: { } at } } ? at.Approximate : null;
}
