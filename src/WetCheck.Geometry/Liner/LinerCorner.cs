namespace WetCheck.Geometry;

/// <summary>What a sheet turned up at both walls does at a corner: it has a spare wedge to fold, or lacks one.</summary>
/// <param name="Angle">The floor's, between the walls, in degrees.</param>
/// <param name="Upturn">The lower of the two, inches.</param>
public sealed record LinerCorner(double Angle, double Upturn)
{
    /// <summary>In degrees: spare over zero, to be pleated; missing below zero, to be closed by a patch piece.</summary>
    public double Wedge => 180 - Angle;

    public bool NeedsPatch => Wedge < 0;

    /// <summary>
    /// How far along one wall the pleat lies on the sheet, at a height over the floor. The wedge is folded in half on
    /// its bisector.
    /// </summary>
    public double Covers(double height) => NeedsPatch ? 0 : Math.Min(height, Upturn) * Math.Tan((90 - (Angle / 2)) * Math.PI / 180);

    /// <summary>What lies on the wall under the pleat: the sheet and the two halves of the wedge.</summary>
    /// <param name="sheet">Thickness, inches.</param>
    public double Thickness(double sheet) => NeedsPatch ? sheet : 3 * sheet;

    /// <summary>How deep the studs are to be recessed under a pleat, that the board lies as flat as beside it.</summary>
    public double Relief(double sheet) => Thickness(sheet) - sheet;
}
