using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The cut sheet of a liner: the sheet laid flat, cut lines thick, folds dashed, pleats and pieces at the corners.</summary>
public static class LinerDrawing
{
    private const double Most = 130;

    /// <returns>Null where the sheet is not known.</returns>
    public static string? Of(FloorReport floor, Walk walk, string language)
    {
        if (floor.Liner.Cut is not { } cut)
        {
            return null;
        }

        var says = new DrawSays(new PanSays(new Phrases(walk.Book, language), walk.Book, walk.Job.Metric == true));
        var canvas = new Canvas();
        var all = cut.Flaps.SelectMany(flap => flap.Corners).Concat(cut.Floor).ToList();
        var (left, top) = (all.Min(at => at.X), all.Max(at => at.Y));
        var profile = new Profile(canvas, Profile.ScaleFor(Math.Max(cut.Size.Along, cut.Size.Across), Most));
        Mm At(Spot at) => profile.At(at.X - left, at.Y - top);
        Edges(canvas, cut, At);
        var (right, bottom) = (profile.At(cut.Size.Along, 0).X, profile.At(0, -cut.Size.Across).Y);
        Dimensions.Across(canvas, [0, right], bottom + 12, bottom + 5, _ => says.Size(cut.Size.Along));
        Dimensions.Upright(canvas, [bottom, 0], -12, -5, _ => says.Size(cut.Size.Across));
        foreach (var flap in cut.Flaps)
        {
            Name(canvas, flap, says, At);
        }

        foreach (var corner in cut.Corners)
        {
            canvas.Label(says.Phrases[corner.Covers == 0 ? Phrase.Draw.Patch : corner.AtCurb ? Phrase.Draw.PleatPatch
                : Phrase.Draw.Pleat], At(corner.At));
        }

        return canvas.Svg("liner", says.Phrases.Say(Phrase.Draw.LinerTitle, ("job", walk.Job.Name)),
            [says.Phrases[Phrase.Draw.LinerTold], .. LinerText.Sheet(cut, says), .. LinerText.Corners(cut, says)],
            () => ScaleBar.Draw(canvas, says));
    }

    /// <summary>
    /// The cut runs round the flaps and the spare wedges between them, which stay on; at a corner without one it runs
    /// in to it.
    /// </summary>
    private static void Edges(Canvas canvas, LinerCut cut, Func<Spot, Mm> at)
    {
        foreach (var flap in cut.Flaps)
        {
            var (near, far, farEnd, nearEnd) = (at(flap.Corners[0]), at(flap.Corners[1]), at(flap.Corners[2]), at(flap.Corners[3]));
            canvas.Line(near, nearEnd, Pen.Thin, Dash.Short);
            canvas.Line(far, farEnd, Pen.Cut);
            canvas.Line(near, far, Pen.Thin, Dash.Short);
            canvas.Line(nearEnd, farEnd, Pen.Thin, Dash.Short);
            foreach (var fold in flap.Folds)
            {
                var part = fold / flap.Beyond;
                canvas.Line(near + ((far - near) * part), nearEnd + ((farEnd - nearEnd) * part), Pen.Thin, Dash.Short);
            }
        }

        // Between two flaps the sheet goes on to where their edges meet; it is folded in half from the corner.
        for (var one = 0; one < cut.Flaps.Count; one++)
        {
            var (flap, next) = (cut.Flaps[one], cut.Flaps[(one + 1) % cut.Flaps.Count]);
            var corner = cut.Corners.FirstOrDefault(fold => Same(fold.At, flap.Corners[0]) && Same(fold.At, next.Corners[3]));
            if (corner is { Covers: > 0 })
            {
                var (start, a, b) = (at(corner.At), at(flap.Corners[1]), at(next.Corners[2]));
                var outer = Meet(a, a - at(flap.Corners[2]), b, b - at(next.Corners[1]));
                canvas.Line(a, outer, Pen.Cut);
                canvas.Line(b, outer, Pen.Cut);

                // Half way between the two fold lines, as far as the lower of the two flaps.
                var half = (a - start).Unit + (b - start).Unit;
                var (low, edge) = flap.Beyond <= next.Beyond ? (a, a - at(flap.Corners[2])) : (b, b - at(next.Corners[1]));
                canvas.Line(start, Meet(start, half, low, edge), Pen.Thin, Dash.Middle);
            }
        }
    }

    /// <summary>Where two lines meet, each through a place in a direction.</summary>
    private static Mm Meet(Mm a, Mm along, Mm b, Mm other)
    {
        var across = (along.X * other.Y) - (along.Y * other.X);
        return a + (along * ((((b.X - a.X) * other.Y) - ((b.Y - a.Y) * other.X)) / across));
    }

    private static void Name(Canvas canvas, LinerFlap flap, DrawSays says, Func<Spot, Mm> at)
    {
        var middle = (at(flap.Corners[0]) + at(flap.Corners[1]) + at(flap.Corners[2]) + at(flap.Corners[3])) * 0.25;
        canvas.Label($"{says.Wall(flap.Side)} {says.Pan.Length(flap.Beyond)}", middle);
    }

    private static bool Same(Spot a, Spot b) => Math.Abs(a.X - b.X) < 1e-6 && Math.Abs(a.Y - b.Y) < 1e-6;
}
