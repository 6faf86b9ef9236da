using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>An item of a line: <c>[PLACE | all | rest] [plan] READING</c>.</summary>
/// <param name="Place">Null: none was named.</param>
/// <param name="Which">All places, or those no other item of the line names.</param>
internal sealed record Item(Piece Piece, Place? Place, Which Which, bool Planned)
{
    public bool IsUnknown => Piece.Text == "?";

    /// <param name="places">Places that may be named; none for an answer that stands at its place already.</param>
    public static Item Of(Piece piece, IReadOnlyList<Place> places, Vocabulary vocabulary)
    {
        var planned = TakePlan(ref piece);
        var (place, which, length) = places.Count == 0 ? (null, Which.Named, 0) : LongestPlace(piece, places, vocabulary);
        if (length > 0)
        {
            piece = piece.From(length);
            planned |= TakePlan(ref piece);
        }

        return new Item(piece, place, length == 0 ? Which.NotSaid : which, planned);
    }

    private static bool TakePlan(ref Piece piece)
    {
        if (piece.Words() is not [{ Text: var first }, ..] || !(Names.Same(first, "plan") || Names.Same(first, "planned")))
        {
            return false;
        }

        piece = piece.From(first.Length);
        return true;
    }

    private static (Place? Place, Which Which, int Length) LongestPlace(Piece piece, IReadOnlyList<Place> places, Vocabulary vocabulary)
    {
        var words = piece.Words();
        for (var count = Math.Min(3, words.Count); count > 0; count--)
        {
            var (text, start) = words[count - 1];
            var name = piece.Text[..(start + text.Length)].TrimEnd(':');
            if (PlaceNames.Find(name, places, vocabulary) is { } place)
            {
                return (place, Which.Named, start + text.Length);
            }

            if (count == 1 && Names.Fold(name) is "all" or "rest" && words.Count > 1)
            {
                return (null, Names.Fold(name) == "rest" ? Which.Rest : Which.All, start + text.Length);
            }
        }

        return (null, Which.NotSaid, 0);
    }
}

/// <summary>Which places an item speaks for.</summary>
internal enum Which { NotSaid, Named, All, Rest }
