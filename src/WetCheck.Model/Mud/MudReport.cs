namespace WetCheck.Model;

/// <summary>How the floor under the tile is built, as far as mortar goes.</summary>
public enum BuiltAs { LinerUnderMortar, BondedMembrane, FormedTray }

/// <summary>The mortar of one floor, and the water it may have to bear. Inches, square inches, cubic inches.</summary>
/// <param name="Area">Of the finished floor without the grate; null: not known.</param>
/// <param name="Fall">Between the finished floor and the level of the drain; null: no rim is settled.</param>
/// <param name="Rim">The highest of the finished floor above the drain; null likewise.</param>
/// <param name="Built">As the job says; null: not said, or there is no such floor.</param>
/// <param name="Ways">As it is built first, then the others.</param>
/// <param name="Water">Standing in a flood test over the foot of the walls; null: not known.</param>
public sealed record MudReport(double? Area, double? Fall, double? Rim, BuiltAs? Built, IReadOnlyList<MudWay> Ways,
    MudWater? Water, IReadOnlyList<PanMissing> Missing);

/// <summary>One way to build the floor. No layers: it takes no bed.</summary>
public sealed record MudWay(BuiltAs As, IReadOnlyList<MudLayer> Layers, MudAmount Whole);

/// <summary>Mortar in place, or the bounds of it.</summary>
/// <param name="Pounds">Null: the book has no weight.</param>
/// <param name="Bags">One for each size that the book has.</param>
public sealed record MudAmount(Interval Volume, Interval? Pounds, IReadOnlyList<BagCount> Bags);

/// <param name="Exact">Bags to a fraction.</param>
/// <param name="Whole">Rounded up; no waste in it.</param>
/// <param name="WithWaste">With the waste of the book, then rounded up; null: the book has none.</param>
public sealed record BagCount(MortarBag Bag, Interval Exact, Interval Whole, Interval? WithWaste);

/// <param name="Key">Of the words that name it: <c>pre-slope</c>, <c>bed</c>.</param>
/// <param name="Thinnest">At the drain; everywhere, where the fall is in another layer.</param>
/// <param name="Thickest">At the highest of the rim; unknown where no rim is settled.</param>
/// <param name="HasFall">It is the layer that makes the fall.</param>
public sealed record MudLayer(string Key, Interval Thinnest, Interval Thickest, MudAmount Amount, bool HasFall);

/// <param name="Depth">At the rim.</param>
/// <param name="Volume">With what stands lower than the rim.</param>
/// <param name="Pounds">Null: the book has no weight.</param>
public sealed record MudWater(double Depth, double Volume, double? Pounds);
