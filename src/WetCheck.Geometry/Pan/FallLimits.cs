namespace WetCheck.Geometry;

/// <summary>Least and most fall of a floor: rise over run, 1/48 for 1/4 in per ft.</summary>
public sealed record FallLimits(double Least, double Most, FallMeasure Measure)
{
    /// <summary>How much farther the farthest may be than the nearest.</summary>
    public double Ratio => Most / Least;
}

/// <summary>Where the least fall is read: square to each wall, or along the folds, which are the longest way.</summary>
public enum FallMeasure { Square, Valley }
