using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The tile of a floor on its folds, on a screen.</summary>
public static class TileText
{
    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(FloorReport floor, Walk walk, string language, string when)
    {
        var phrases = new Phrases(walk.Book, language);
        var (tile, says) = (floor.Tile, new PanSays(phrases, walk.Book, walk.Job.Metric == true));
        var lines = new List<string>(ScreenText.Head(Heading.Of(new Telling(walk, phrases), when)));
        lines.AddRange(MarksText.Block(Phrase.Tile.Folds, Folds(tile, says), phrases));
        lines.AddRange(MarksText.Block(Phrase.Tile.Sizes, Sizes(tile, says), phrases));
        lines.AddRange(MarksText.Block(Phrase.Tile.Laid, tile.Laid is { } laid ? Laid(laid, tile, says) : [], phrases));
        lines.AddRange(MarksText.Block(Phrase.Pan.Missing, tile.Missing.Select(says.Missing), phrases));
        lines.Add("");
        lines.AddRange(Column.Wrap(phrases[Phrase.Tile.How]));
        lines.AddRange(Column.Wrap(phrases[Phrase.Close.Record]));
        return string.Join('\n', lines) + "\n";
    }

    private static IEnumerable<string> Folds(TileReport tile, PanSays says)
    {
        if (tile.Rim is not { } rim)
        {
            return [says.Phrases[Phrase.Tile.NoRim]];
        }

        return tile.Folds.Count == 0 ? [says.Phrases[Phrase.Tile.OnePlane]]
            : [says.Phrases.Say(Phrase.Tile.Rim, ("rim", says.Length(rim))),
                .. tile.Folds.GroupBy(fold => (Bend: says.Fall(fold.Half * 2), Angle: Degrees(fold.Angle)))
                .Select(alike =>
                    says.Phrases.Say(Phrase.Tile.Fold,
                    ("corners", says.Alike(alike.Select(fold => Corner(fold, says)))), ("bend", alike.Key.Bend),
                    ("angle", alike.Key.Angle)))];
    }

    private static IEnumerable<string> Sizes(TileReport tile, PanSays says)
    {
        if (tile.Sizes.Count == 0)
        {
            yield break;
        }

        if (tile.Allowed is { } allowed)
        {
            var sources =
                tile.Rows.SelectMany(row => says.Book.Sources.GetValueOrDefault(row, []))
                .Select(entry => new Cited(entry, null, null).Say(says.Phrases)).Distinct();
            yield return says.Phrases.Say(Phrase.Tile.Allowed, ("allowed", says.Length(allowed)), ("sources", string.Join("; ", sources)));
        }

        foreach (var size in tile.Sizes)
        {
            yield return says.Phrases.Say(size.Allowed switch
            {
                Tri.Yes => Phrase.Tile.SizeFits,
                Tri.No => Phrase.Tile.SizeLips,
                _ => Phrase.Tile.Size
            }, ("side", says.Length(size.Side)),
                ("step", says.Length(size.Worst, Rounding.Up)));
        }

        if (tile.LargestUncut is { } largest)
        {
            yield return says.Phrases.Say(Phrase.Tile.Largest, ("side", says.Length(largest, Rounding.Down)));
        }
    }

    private static IEnumerable<string> Laid(TileLaid laid, TileReport tile, PanSays says)
    {
        var phrases = says.Phrases;
        yield return phrases.Say(Phrase.Tile.Grid, ("long", says.Length(laid.Long)), ("wide", says.Length(laid.Wide)),
            ("joint", says.Length(laid.Joint)),
            ("count", laid.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            ("way", phrases[laid.Diagonal ? Phrase.Tile.Diagonal : Phrase.Tile.Square]));
        if (laid.At is not { } at)
        {
            yield return phrases[Phrase.Tile.NoStep];
            yield break;
        }

        var fits = tile.Allowed is { } allowed && laid.Worst <= allowed;
        yield return phrases.Say(tile.Allowed is null ? Phrase.Tile.Worst : fits ? Phrase.Tile.WorstFits
            : Phrase.Tile.WorstLips, ("step", says.Length(laid.Worst, Rounding.Up)), ("at", says.Place(at)));
        yield return phrases.Say(Phrase.Tile.Gap, ("gap", says.Length(laid.Gap, Rounding.Up)));
        if (laid.ToCut.Count > 0)
        {
            yield return phrases.Say(Phrase.Tile.ToCut,
                ("count", laid.ToCut.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)),
                ("places", string.Join("; ", laid.ToCut.Take(12).Select(says.Place))
                + (laid.ToCut.Count > 12 ? "; ..." : "")));
        }

        if (laid.Best is var (step, along, across))
        {
            yield return phrases.Say(Phrase.Tile.Shift, ("step", says.Length(step, Rounding.Up)),
                ("along", says.Length(Math.Abs(along))), ("across", says.Length(Math.Abs(across))));
        }
    }

    private static string Corner(TileFold fold, PanSays says) =>
        fold.Corner.Length > 0 ? says.Side(fold.Corner)
        : says.Phrases.Say(Phrase.Pan.Corner, ("at", says.Place(fold.At)));

    private static string Degrees(double angle) => Math.Round(angle).ToString(System.Globalization.CultureInfo.InvariantCulture);
}
