namespace WetCheck.Geometry;

/// <summary>A reading of a floor's level. Inches.</summary>
/// <param name="Height">Over any one level plane; which one cancels.</param>
/// <param name="Half">Half a mark of the tool: the true height lies within so much of it.</param>
public readonly record struct LevelPoint(PlanPoint At, double Height, double Half);
