using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>How high water can stand on each layer before it leaves, in a test and in use, and where.</summary>
internal static class WaterLevels
{
    /// <summary>Nobody knows how far down a cut or an open seam goes: to the floor, at the worst.</summary>
    private static readonly HeightTold s_anywhere = new(Spread.Within(Interval.AtLeast(0)), false, false);

    public static IEnumerable<WaterStand> Of(Job job, IReadOnlyList<PartState> known, Standing told)
    {
        var curb = told.IsHere("curb");
        if (told.IsHere("liner"))
        {
            yield return Stand("liner", inUse: false, Liner(known, told, "rough curb"));
            yield return Stand("liner", inUse: true, Liner(known, told, "finished threshold"));
        }
        else if (told.IsHere("membrane"))
        {
            yield return Stand("membrane", inUse: false, Membrane(known, told, curb ? "rough curb" : "room floor"));
        }

        yield return Stand("floor", inUse: true, Floor(told, curb));

        WaterStand Stand(string layer, bool inUse, IEnumerable<WaterWay> ways)
        {
            var all = ways.ToLookup(way => way.Height.Is.AsRead.IsPoint);
            return new(layer, inUse, layer == "liner" ? Standing.LinerZero : Standing.Zero,
                [.. all[true].OrderBy(way => way.Height.Is.AsRead.Lo).ThenBy(way => way.IsEntry)],
                [.. all[false]],
                layer == "liner"
                    ? [.. job.Lists.Where(list => list.Kind.Name is "fastener" or "seam" && list.Whole != Tri.Yes)
                    .Select(list => list.Kind.Name)] : []);
        }
    }

    private static IEnumerable<WaterWay> Liner(IReadOnlyList<PartState> known, Standing told, string over)
    {
        if (told.Between(Standing.LinerZero, over) is { } entry)
        {
            yield return new WaterWay("curb", "entry", entry, IsEntry: true);
        }

        foreach (var part in known.Where(part => part.Exists != Tri.No && !part.Part.IsOther))
        {
            var place = part.Part.Place?.Name ?? "";
            switch (part.Kind)
            {
                case "liner side" when part.Facts.ContainsKey("top"):
                    yield return new WaterWay("edge", place, told.AboveLiner(part.Facts["top"]), false);
                    break;
                case "fastener" when place != "curb outside":
                    yield return new WaterWay("nail", place, told.AboveLiner(part.Facts["height"]), false);
                    break;
                case "liner corner" when Is(part, "made", "cut"):
                    yield return new WaterWay("cut", place, s_anywhere, false);
                    break;
                case "seam" when Is(part, "joined", "open"):
                    yield return new WaterWay("seam", place, s_anywhere, false);
                    break;
            }
        }
    }

    private static IEnumerable<WaterWay> Membrane(IReadOnlyList<PartState> known, Standing told, string over)
    {
        if (told.Above(over) is { } entry)
        {
            yield return new WaterWay("curb", "entry", entry, IsEntry: true);
        }

        if (known.FirstOrDefault(part => part.Kind == "wall")
            ?.Facts.GetValueOrDefault("waterproof to") is { OnPaper: Known.Number number } fact)
        {
            yield return new WaterWay("edge", "", number.Datum is null or "top of drain" ? Standing.Told(fact) : HeightTold.Unknown, false);
        }
    }

    /// <summary>Over the finished floor: as high as what one steps over, and never before the floor itself is passed.</summary>
    private static IEnumerable<WaterWay> Floor(Standing told, bool curb)
    {
        if (told.Above(curb ? "finished threshold" : "room floor") is { } entry)
        {
            var pass = told.Rim("entry");
            yield return new WaterWay(curb ? "curb" : "room", "entry",
                pass.Is.IsUnknown ? entry
                : entry with
                {
                    Is = entry.Is.Map(pass.Is, Interval.Max),
                    IsPlanned = entry.IsPlanned || pass.IsPlanned
                }, IsEntry: true);
        }
    }

    private static bool Is(PartState part, string reading, string choice) =>
        part.Facts.GetValueOrDefault(reading)?.OnPaper is Known.OneOf one && one.Choice == choice;
}
