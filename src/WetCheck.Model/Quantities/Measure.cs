namespace WetCheck.Model;

/// <summary>What a number measures, and the unit it is kept in.</summary>
public enum Measure
{
    /// <summary>A plain number of things, or a year.</summary>
    Count,

    /// <summary>Inches. A millimetre is 5/127 in, a mil 1/1000 in.</summary>
    Length,

    /// <summary>Rise over run, no unit: 1/4 in per ft is 1/48.</summary>
    Slope,

    /// <summary>Square inches.</summary>
    Area,

    /// <summary>Cubic inches.</summary>
    Volume,

    /// <summary>Minutes.</summary>
    Duration,

    /// <summary>Degrees Fahrenheit.</summary>
    Temperature,

    /// <summary>Hundredths.</summary>
    Percent,
}
