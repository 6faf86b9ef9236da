using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The layers of a section, from below up. Left is the back wall, right the entry.</summary>
internal sealed class SectionLayers(Profile profile, FloorSection cut, double depth, DrawSays says)
{
    private const double Board = 0.5;
    private const double Stud = 3.5;

    private double Drain { get; } = depth - (cut.DrainFromEntry ?? depth / 2);

    /// <summary>Of a curb whose width nobody has told; a label says so.</summary>
    private double Right { get; } = depth + (cut.CurbWidth ?? 4.5);

    private double Base { get; } = cut.Substrate ?? -1.5;

    private double Top { get; } =
        new[] { cut.FinishedCurb, cut.RoughCurb, cut.RoomFloor,
        cut.Sides.FirstOrDefault(side => side.Name == "back")?.Top, 4 }.Max()!.Value + 3;

    private double? Bed => cut.HasLiner ? cut.Bed : null;

    public void WallAndCurb()
    {
        profile.Block(-Board - Stud, Base, -Board, Top, Pen.Seen, Hatch.Wood);
        Label(Phrase.Draw.Studs, -Board - Stud, Top * 0.7, new Mm(-1, 0));
        if (cut is { Board: { } gap, Back: { } back } && Bed is { } bed)
        {
            profile.Block(-Board, back + bed + gap, 0, Top, Pen.Seen, Hatch.Board);
            Label(Phrase.Draw.Board, 0, Top - 0.8, new Mm(1, 0));
        }

        if (cut.RoughCurb is { } rough)
        {
            profile.Block(depth, Base, Right, rough, Pen.Seen, Hatch.Wood);
            Label(cut.CurbWidth is null ? Phrase.Draw.CurbWidth : Phrase.Draw.Curb, Right, (Base + rough) / 2, new Mm(1, 0));
        }

        if (cut is { RoughCurb: { } under, FinishedCurb: { } finished } && finished > under)
        {
            profile.Block(depth, under, Right, finished, Pen.Seen, Hatch.Mortar);
        }
    }

    public void Floor()
    {
        if (cut.Substrate is { } bare)
        {
            profile.Line(-Board, bare, depth, bare, Pen.Cut);
            Label(Phrase.Draw.Substrate, depth * 0.25, bare, new Mm(0, 1));
        }

        var isTold = cut is { Back: not null, Entry: not null };
        var (back, entry) = (cut.Back ?? 0, cut.Entry ?? 0);
        if (Bed is { } bed && isTold)
        {
            Layer(back, entry, 0, bed, Hatch.Mortar);
            Label(Phrase.Draw.Bed, depth * 0.2, back + bed, new Mm(0, -1), says.Pan.Length(bed));
            if (cut.Adds is { } adds)
            {
                Layer(back + bed, entry + bed, bed, adds, Hatch.Tile);
            }
        }

        var dash = isTold ? Dash.Whole : Dash.Short;
        profile.Line(cut.HasLiner ? -Board : 0, back, Drain, 0, Pen.Cut, dash);
        profile.Line(Drain, 0, depth, entry, Pen.Cut, dash);
        profile.Line(Drain - 1, 0, Drain - 1, Base - 1.5, Pen.Seen);
        profile.Line(Drain + 1, 0, Drain + 1, Base - 1.5, Pen.Seen);
        Label(Phrase.Draw.Pipe, Drain + 1, Base - 1, new Mm(1, 0.3));
        if (!cut.HasLiner)
        {
            Label(isTold ? Phrase.Draw.Floor : Phrase.Draw.FallNotTold, depth * 0.3, back * 0.7, new Mm(0, -1));
            return;
        }

        Label(isTold ? Phrase.Draw.Liner : Phrase.Draw.FallNotTold, depth * 0.75, entry * 0.5, new Mm(0.2, 1));
        if (cut.Sides.FirstOrDefault(side => side.Name == "back") is { Top: { } up })
        {
            profile.Line(-Board, back, -Board, up, Pen.Cut);
            Label(Phrase.Draw.LinerTop, -Board, up, new Mm(-1, -0.4), says.Pan.Length(up));
        }

        if (cut.RoughCurb is { } rough)
        {
            profile.Line(depth, entry, depth, rough, Pen.Cut);
            profile.Line(depth, rough, Right, rough, Pen.Cut);
            profile.Line(Right, rough, Right, Math.Max(Base, rough - 3), Pen.Cut);
        }
    }

    /// <summary>How high water stands before it spills.</summary>
    public void Water()
    {
        foreach (var (level, key) in new[] { (cut.HasLiner ? cut.RoughCurb : null, Phrase.Draw.WaterTest),
            (cut.FinishedCurb, Phrase.Draw.WaterUse) })
        {
            if (level is { } height)
            {
                profile.Line(0, height, depth, height, Pen.Thin, Dash.Short);
                Label(key, depth * 0.45, height, new Mm(0, -1), says.Pan.Length(height));
            }
        }
    }

    public void Nails()
    {
        foreach (var nail in cut.Nails)
        {
            var (x, way) = nail.Place switch
            {
                "back" => (-Board, new Mm(-1, 0)),
                "curb inside" => (depth, new Mm(-1, 0)),
                "curb outside" => (Right, new Mm(1, 0)),
                _ => (double.NaN, new Mm(0, -1)),
            };
            if (!double.IsNaN(x))
            {
                var into = nail.Place == "curb inside" ? 1 : -1;
                profile.Line(x - (0.25 * into), nail.Height, x + (1.2 * into), nail.Height, Pen.Cut);
                Label(Phrase.Draw.Nail, nail.Place == "back" ? -Board - Stud : x - (0.25 * into), nail.Height, way,
                    says.Pan.Length(nail.Height));
            }
        }
    }

    /// <summary>Heights of the curb at the right, the floor below.</summary>
    public void Sizes()
    {
        List<double> ups =
            [0, .. new[] { cut.RoughCurb, cut.FinishedCurb ?? cut.RoomFloor }.OfType<double>().Where(up => up > 0.05)
            .Order()];
        Dimensions.Upright(profile.Canvas, [.. ups.Select(up => profile.At(0, up).Y)], profile.At(Right, 0).X + 34,
            profile.At(Right, 0).X + 28, one => says.Size(ups[one + 1] - ups[one]));
        List<double> xs = cut.DrainFromEntry is null ? [0, depth] : [0, Drain, depth];
        var below = profile.At(0, Base - 1.5).Y + 12;
        Dimensions.Across(profile.Canvas, [.. xs.Select(x => profile.At(x, 0).X)], below, below - 5,
            one => says.Size(xs[one + 1] - xs[one]));
        profile.Canvas.Label(says.Wall("back"), profile.At(-Board - (Stud / 2), Base), toward: new Mm(-0.3, 1));
        profile.Canvas.Label(says.Entry, profile.At(Right, Base), isBold: true, toward: new Mm(0.5, 1));
    }

    private void Layer(double back, double entry, double atDrain, double thick, Hatch hatch)
    {
        profile.Ring(Pen.Seen, hatch, Dash.Whole, (0, back), (Drain - 1, atDrain), (Drain - 1, atDrain + thick), (0, back + thick));
        profile.Ring(Pen.Seen, hatch, Dash.Whole, (Drain + 1, atDrain), (depth, entry), (depth, entry + thick),
            (Drain + 1, atDrain + thick));
    }

    private void Label(string key, double x, double up, Mm toward, string height = "") =>
        profile.Canvas.Label(says.Phrases.Say(key, ("height", height)), profile.At(x, up), toward: toward);
}
