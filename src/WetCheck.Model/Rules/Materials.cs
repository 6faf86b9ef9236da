namespace WetCheck.Model;

/// <summary>What mortar and water weigh and what a bag gives; null where the book has no figure.</summary>
/// <param name="Water">Pounds on a square foot for each inch of depth.</param>
/// <param name="Mortar">Likewise, set.</param>
/// <param name="TestDepth">Inches of water over the foot of the walls in a flood test.</param>
/// <param name="Waste">More than fills the floor, in hundredths of it.</param>
public sealed record Materials(MaterialFigure? Water, MaterialFigure? Mortar, MaterialFigure? TestDepth,
    MaterialFigure? Waste, IReadOnlyList<MortarBag> Bags, IReadOnlyList<MortarMix> Mixes)
{
    /// <summary>The step between two tiles that passes, beside a joint under <see cref="JointFrom"/>; inches.</summary>
    public MaterialFigure? LippageNarrow { get; init; }

    /// <summary>The same beside a wider joint.</summary>
    public MaterialFigure? LippageWide { get; init; }

    public MaterialFigure? JointFrom { get; init; }

    public static Materials None { get; } = new(null, null, null, null, [], []);

    /// <summary>Rows of the sources that they are taken from, with their places.</summary>
    public IEnumerable<(string Row, At At)> Rows =>
        [.. new[] { Water, Mortar, TestDepth, Waste, LippageNarrow, LippageWide, JointFrom }.OfType<MaterialFigure>()
            .Select(one => (one.Row, one.At)), .. Bags.Select(bag => (bag.Row, bag.At)),
            .. Mixes.Select(mix => (mix.Row, mix.At))];
}

public sealed record MaterialFigure(Rational Number, string Row, At At);

/// <param name="Pounds">Of the bag, dry.</param>
/// <param name="Yield">Cubic inches in place.</param>
public sealed record MortarBag(Rational Pounds, Rational Yield, string Row, At At);

/// <summary>Mixed on the site: parts by volume.</summary>
/// <param name="Use">What it is for.</param>
/// <param name="Sand">Parts to one of cement, in words: <c>5, 4 to 6 accepted</c>.</param>
public sealed record MortarMix(Words Use, Words Sand, string Row, At At);
