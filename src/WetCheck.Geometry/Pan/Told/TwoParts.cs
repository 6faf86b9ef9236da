namespace WetCheck.Geometry;

/// <summary>One part of a floor with two drains, its drain, and what lies beyond the ridge.</summary>
internal sealed record TwoParts(Outline Outline, PlanPoint Drain, OtherPart Beyond)
{
    /// <returns>Both parts; empty where one of them holds both drains or none.</returns>
    public static IReadOnlyList<TwoParts> Of(FloorCut cut, PlanPoint first, PlanPoint second)
    {
        var own = cut.Parts.FirstOrDefault(part => part.Contains(first));
        var other = cut.Parts.FirstOrDefault(part => part != own && part.Contains(second));
        return own is null || other is null ? [] : [new(own, first, new(other, second)), new(other, second, new(own, first))];
    }
}
