namespace WetCheck.Model;

/// <summary>What a reading is taken with. A count, a choice and a year have no mark.</summary>
/// <param name="Marks">Its smallest mark for each measure it reads, in base units.</param>
public sealed record Tool(string Name, Words Say, IReadOnlyDictionary<Measure, Quantity> Marks)
{
    public Rational HalfMark(Measure measure) => Marks.TryGetValue(measure, out var mark) ? mark.Value / 2 : 0;
}
