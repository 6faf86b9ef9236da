using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads the members of a list: items between commas, each a part of its own.</summary>
internal sealed class ListLines(Vocabulary vocabulary, Draft draft, PartLines parts, ProblemList problems)
{
    /// <param name="place">Null: each item names its own, or the list has no places.</param>
    public void Members(PartKind kind, Place? place, Answer answer, At at)
    {
        var whole = Piece.Of(answer);
        var isNone = whole.Is("none") || (whole.Is("no") && kind.MayBeAbsent);
        if (place is null && (isNone || kind.WholeWhenGiven))
        {
            draft.Lists[kind.Name] = (Tri.Yes, at);
        }

        if (isNone)
        {
            return;
        }

        var items = whole.Items();
        var most = kind.Many == Many.Ordered ? Limits.Layers : Limits.Members;
        foreach (var piece in items.Take(most))
        {
            var item = Item.Of(piece, place is null ? kind.Places : [], vocabulary);
            if (!Member(kind, place ?? item.Place, item, at))
            {
                draft.Torn.Add(kind.Name);
            }
        }

        if (items.Count > most)
        {
            problems.Add(items[most].At, kind.Many == Many.Ordered ? Messages.TooManyLayers(most) : Messages.TooManyMembers(most));
            draft.Torn.Add(kind.Name);
        }
    }

    /// <summary>False, with a problem, where it can't be read; the next one has its number all the same.</summary>
    private bool Member(PartKind kind, Place? place, Item item, At at)
    {
        var index = draft.NextIndex(kind, place);
        if (place is null && kind.Places.Count > 0)
        {
            problems.Add(item.Piece.At, Messages.PlaceMissing(item.Piece.Text, [.. kind.Places.Select(known => known.Name)]));
            return false;
        }

        if (item.Piece.Is("none") || item.Piece.Is("hidden"))
        {
            problems.Add(item.Piece.At, Messages.NoneAmongMembers(item.Piece.Text));
            return false;
        }

        if (item.IsUnknown)
        {
            draft.Of(kind, place, index).There(at);
            return true;
        }

        return parts.Read(item, kind) is { } read && Add(draft.Of(kind, place, index), read);
    }

    private static bool Add(PartNotes member, IReadOnlyList<(string Name, Reading Reading)> read)
    {
        foreach (var (name, reading) in read)
        {
            member.Add(name, reading);
        }

        return true;
    }
}
