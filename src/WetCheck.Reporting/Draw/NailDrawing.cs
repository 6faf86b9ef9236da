using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// Each wall that the liner goes up, and the faces of the curb, seen from inside: the liner's edge, where water stands,
/// every nail at its height.
/// </summary>
public static class NailDrawing
{
    private const double Most = 120;
    private const double Apart = 16;

    /// <returns>Null where no wall has a liner whose edge or nails are told.</returns>
    public static string? Of(FloorReport floor, Walk walk, string language)
    {
        var cut = floor.Heights.Section;
        var says = new DrawSays(new PanSays(new Phrases(walk.Book, language), walk.Book, walk.Job.Metric == true));
        var entry = floor.Falls.Sides.FirstOrDefault(side => side.Name == "entry")?.Length;
        List<SectionSide> strips =
        [
            .. cut.Sides.Where(side => side.Length is not null && (side.Top is not null || cut.Nails.Any(nail => nail.Place == side.Name))),
            .. cut.Nails.Select(nail => nail.Place).Distinct()
                .Where(place => place.StartsWith("curb", StringComparison.Ordinal) && entry is not null).Order()
                .Select(place => new SectionSide(place, entry, null)),
        ];
        if (strips.Count == 0)
        {
            return null;
        }

        var canvas = new Canvas();
        var scale = Profile.ScaleFor(strips.Max(strip => strip.Length!.Value), Most);
        var top = strips.Select(strip => strip.Top).Concat(cut.Nails.Select(nail => (double?)nail.Height))
            .Append(cut.FinishedCurb).Append(cut.RoughCurb).OfType<double>().DefaultIfEmpty(4).Max() + 1;
        var down = 0.0;
        foreach (var strip in strips)
        {
            var profile = new Profile(canvas, scale, down);
            Strip(profile, strip, cut, top, says);
            down += profile.At(0, 0).Y - profile.At(0, top).Y + Apart;
        }

        return canvas.Svg("nails", says.Phrases.Say(Phrase.Draw.NailsTitle, ("job", walk.Job.Name)),
            [says.Phrases[Phrase.Draw.NailsTold], .. NailsTold.Of(cut, says)], () => ScaleBar.Draw(canvas, says));
    }

    private static void Strip(Profile profile, SectionSide strip, FloorSection cut, double top, DrawSays says)
    {
        var length = strip.Length!.Value;
        profile.Line(0, 0, length, 0, Pen.Seen);
        profile.Line(0, 0, 0, top, Pen.Seen);
        profile.Line(length, 0, length, top, Pen.Seen);
        foreach (var (level, key) in new[] { (cut.RoughCurb, Phrase.Draw.LevelRough), (cut.FinishedCurb, Phrase.Draw.LevelFinished) })
        {
            if (level is { } height)
            {
                profile.Line(0, height, length, height, Pen.Thin, Dash.Short);
                Label(key, length, height, new Mm(1, 0), says.Pan.Length(height));
            }
        }

        if (strip.Top is { } edge)
        {
            profile.Line(0, edge, length, edge, Pen.Cut);
            Label(Phrase.Draw.LinerTop, length, edge, new Mm(1, -0.2), says.Pan.Length(edge));
        }

        var nails = cut.Nails.Where(nail => nail.Place == strip.Name).ToList();
        for (var at = 0; at < nails.Count; at++)
        {
            // Where along the wall a nail is nobody has told: they stand side by side.
            var middle = profile.At(length * (at + 1) / (nails.Count + 1), nails[at].Height);
            profile.Canvas.Line(middle + new Mm(-1, -1), middle + new Mm(1, 1), Pen.Seen);
            profile.Canvas.Line(middle + new Mm(-1, 1), middle + new Mm(1, -1), Pen.Seen);
            if (NailsTold.IsUnderWater(nails[at], cut))
            {
                profile.Canvas.Circle(middle, 2.1, Pen.Seen);
            }

            profile.Canvas.Label(says.Pan.Length(nails[at].Height), middle + new Mm(0, 2.4));
        }

        profile.Canvas.Label(says.Wall(strip.Name), profile.At(length / 2, 0), isBold: true, toward: new Mm(0, 1));

        void Label(string key, double x, double up, Mm toward, string height) =>
            profile.Canvas.Label(says.Phrases.Say(key, ("height", height)), profile.At(x, up), toward: toward);
    }
}
