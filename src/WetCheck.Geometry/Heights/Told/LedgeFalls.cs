using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>
/// How much lower the front of a niche, a bench, a sill is to stand than its back: what the rule asks over the run that
/// was read.
/// </summary>
internal static class LedgeFalls
{
    public static IEnumerable<HeightLine> Of(RuleBook book, IReadOnlyList<PartState> known)
    {
        var asked = (book.Rule("walls/ledge-fall")?.Body as RuleBody.Require)?.Holds?.Parts().OfType<Condition.Compare>().ToList() ?? [];
        if (Limit(asked, Comparison.AtLeast) is not { } least || Limit(asked, Comparison.AtMost) is not { } most)
        {
            yield break;
        }

        foreach (var ledge in known.Where(part => part.Kind == "ledge" && part.Exists != Tri.No))
        {
            if (ledge.Facts.GetValueOrDefault("fall")?.Counted?.Value is ReadingValue.OfFall { ByRatio: false, Run: var run })
            {
                yield return new HeightLine(HeightGroup.Ledges, "ledge", ledge.Part.Place!.Name,
                    new HeightTold(Spread.Within(new Interval(least * run, most * run)), false, false), null);
            }
        }
    }

    private static Rational? Limit(IEnumerable<Condition.Compare> asked, Comparison by) =>
        asked.Where(test => test.By == by).Select(test => (test.To as Operand.Fixed)?.Quantity.Value).FirstOrDefault();
}
