using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The heights of a floor in JSON. Inches above the datum named.</summary>
internal static class HeightsJson
{
    public static HeightsShape Shape(HeightReport heights, PanSays says) => new()
    {
        Lines = [.. heights.Lines.Select(Line)],
        Asked = [.. heights.Asked.Select(asked => Asked(asked, says))],
        Water = [.. heights.Water.Select(Stand)],
        Missing = PanJson.Missing(heights.Missing, says),
    };

    private static HeightLineShape Line(HeightLine line)
    {
        var (height, least, most) = Figures(line.Height);
        return new()
        {
            Group = line.Group.ToString().ToLowerInvariant(),
            Key = line.Key,
            Place = line.Place,
            Above = line.Datum,
            Height = height,
            Least = least,
            Most = most,
            Planned = line.Height.IsPlanned,
            ReadAgain = line.Height.IsApart,
        };
    }

    private static HeightAskedShape Asked(HeightAsked asked, PanSays says)
    {
        var (height, least, most) = Figures(asked.Least);
        return new()
        {
            Key = asked.Key,
            Above = asked.Datum,
            Height = height,
            Least = least,
            Most = most,
            Planned = asked.Least.IsPlanned,
            ReadAgain = asked.Least.IsApart,
            Codes = asked.Codes,
            Say = new HeightSays(says).Asked(asked),
        };
    }

    private static WaterShape Stand(WaterStand stand) => new()
    {
        Layer = stand.Layer,
        InUse = stand.InUse,
        AtTheEntry = stand.AtTheEntry.ToString().ToLowerInvariant(),
        Above = stand.Datum,
        Ways = [.. stand.Ways.Select(Way)],
        Open = [.. stand.Open.Select(Way)],
        Unseen = stand.Unseen,
    };

    private static WaterWayShape Way(WaterWay way)
    {
        var (height, least, most) = Figures(way.Height);
        return new()
        {
            Key = way.Key,
            Place = way.Place,
            Height = height,
            Least = least,
            Most = most,
            Planned = way.Height.IsPlanned,
            ReadAgain = way.Height.IsApart,
        };
    }

    /// <summary>One number as read, or the bounds that are known of it.</summary>
    private static (decimal? Height, decimal? Least, decimal? Most) Figures(HeightTold told)
    {
        var read = told.Is.AsRead;
        var (least, most) = (JsonFigures.Known(read.Lo?.Approximate), JsonFigures.Known(read.Hi?.Approximate));
        return (read.IsPoint ? least : null, least, most);
    }
}
