using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The part of a floor that falls to another drain. Both meet at a level ridge, so they share the rim.</summary>
internal sealed record OtherPart(Outline Outline, PlanPoint Drain)
{
    /// <summary>Heights of the rim that do for both.</summary>
    public (double Least, double Most) Shared((double Least, double Most) window, Grate grate, FallLimits fall)
    {
        var sees = Outline.IsSeenWholeFrom(Drain) && Outline.Walls.All(wall => Pan.Run(wall, Drain, grate) > 0);
        var other = sees ? new Pan(Outline, Drain, grate).RimWindow(fall) : window;
        return (Math.Max(window.Least, other.Least), Math.Min(window.Most, other.Most));
    }

    public Spot At => new(Drain.X, Drain.Y);
}
