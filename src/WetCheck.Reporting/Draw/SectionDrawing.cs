using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The floor cut from the back wall through the drain and the curb. What nobody has told as one number is not drawn.</summary>
public static class SectionDrawing
{
    private const double Most = 160;

    /// <returns>Null where neither the floor's depth nor the curb's height is told.</returns>
    public static string? Of(FloorReport floor, Walk walk, string language)
    {
        var cut = floor.Heights.Section;
        if (cut is not { Depth: { } depth } || (cut.RoughCurb ?? cut.RoomFloor) is null)
        {
            return null;
        }

        var says = new DrawSays(new PanSays(new Phrases(walk.Book, language), walk.Book, walk.Job.Metric == true));
        var heights = new HeightSays(says.Pan);
        var canvas = new Canvas();
        var profile = new Profile(canvas, Profile.ScaleFor(depth + 16, Most));
        var drawn = new SectionLayers(profile, cut, depth, says);
        drawn.WallAndCurb();
        drawn.Floor();
        drawn.Water();
        drawn.Nails();
        drawn.Sizes();
        return canvas.Svg("section", says.Phrases.Say(Phrase.Draw.SectionTitle, ("job", walk.Job.Name)),
            [says.Phrases[Phrase.Draw.SectionTold],
                .. floor.Heights.Lines.Select(line =>
                says.Phrases.Say(Phrase.Heights.Line, ("what", heights.Name(line.Key, [line.Place])),
                ("height", heights.Line(line)))), .. NailsTold.Of(cut, says)],
            () => ScaleBar.Draw(canvas, says));
    }
}
