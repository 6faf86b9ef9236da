namespace WetCheck.Benchmarks.Peers;

/// <summary>What a drawn check asks of a piece.</summary>
internal enum Shape
{
    /// <summary>The drop is at least the first limit.</summary>
    AtLeast,

    /// <summary>The gap is at most the first limit.</summary>
    AtMost,

    /// <summary>The run is over the first limit and under the second.</summary>
    Between,

    /// <summary>The piece is of board or foam, or its drop is at least the first limit.</summary>
    ChoiceOr,

    /// <summary>The drop is at least the gap.</summary>
    OneAgainstOther,
}

/// <summary>A drawn check, before it is written for one of the contenders.</summary>
/// <param name="First">A limit in sixteenths of an inch.</param>
/// <param name="Second">Another, not below the first.</param>
internal sealed record Check(int Number, Shape Shape, int First, int Second);
