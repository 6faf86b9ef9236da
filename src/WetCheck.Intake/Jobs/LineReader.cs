using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads the answers of one line into the draft.</summary>
internal sealed class LineReader(Vocabulary vocabulary, Draft draft, AnswerReader answers, ValueReader values, ProblemList problems)
{
    /// <summary>Nobody counts more on one line.</summary>
    private const int MostMembers = 200;

    private readonly PartReader _parts = new(values, problems);

    public void Read(Line line, Entry entry)
    {
        var at = entry.Key.At;
        if (line is Line.Seen seen)
        {
            Seen(seen.Kind, entry);
            return;
        }

        foreach (var answer in answers.Read(entry.Value))
        {
            switch (line)
            {
                case Line.OfReading { Kind: var kind, Reading: var reading }:
                    OneReading(draft.Of(kind), reading, Piece.Of(answer));
                    break;
                case Line.OfPlace { Kind: { IsList: true } kind, Place: var place }:
                    Members(kind, place, answer, at);
                    break;
                case Line.OfPlace { Kind: var kind, Place: var place }:
                    Whole(kind, draft.Of(kind, place), Item.Of(Piece.Of(answer), [], vocabulary), at);
                    break;
                case Line.OfKind { Kind: { IsList: true } kind }:
                    Members(kind, null, answer, at);
                    break;
                case Line.OfKind { Kind: { Many: Many.PerPlace } kind }:
                    AllPlaces(kind, answer, at);
                    break;
                case Line.OfKind { Kind: var kind }:
                    Whole(kind, draft.Of(kind), Item.Of(Piece.Of(answer), [], vocabulary), at);
                    break;
            }
        }
    }

    /// <summary>The one part of a section, answered on the section's line.</summary>
    public void WholePart(PartKind kind, Piece piece, Section section, At at)
    {
        if (kind.Main is null && !(piece.Is("none") || piece.Is("?") || piece.Is("yes") || piece.Is("no")))
        {
            problems.Add(piece.At, Messages.SayWhichBelow(section.Name, piece.Text, [.. section.Lines.Select(line => line.Name)]));
            return;
        }

        Whole(kind, draft.Of(kind), Item.Of(piece, [], vocabulary), at);
    }

    /// <summary>A heading with an answer: <c>seams: none</c>, or items each with its place.</summary>
    public void AllKinds(IReadOnlyList<PartKind> kinds, Answer answer, string section, At at)
    {
        foreach (var kind in kinds)
        {
            if (kind.IsList)
            {
                Members(kind, null, answer, at);
            }
            else
            {
                AllPlaces(kind, answer, at);
            }
        }

        if (kinds.Count == 0)
        {
            problems.Add(at, Messages.OneAnswerHere(section));
        }
    }

    /// <summary>Members of a list on one line.</summary>
    public void Members(PartKind kind, Place? place, Answer answer, At at)
    {
        var whole = Piece.Of(answer);
        if (whole.Is("none") || (whole.Is("no") && kind.MayBeAbsent))
        {
            if (place is null)
            {
                draft.Lists[kind.Name] = (Tri.Yes, at);
            }

            return;
        }

        if (place is null && kind.WholeWhenGiven)
        {
            draft.Lists[kind.Name] = (Tri.Yes, at);
        }

        var items = whole.Items();
        foreach (var piece in items.Take(MostMembers))
        {
            Member(kind, place, Item.Of(piece, place is null ? kind.Places : [], vocabulary), at);
        }

        if (items.Count > MostMembers)
        {
            problems.Add(items[MostMembers].At, Messages.TooManyMembers(MostMembers));
            draft.Torn.Add(kind.Name);
        }
    }

    private void Member(PartKind kind, Place? place, Item item, At at)
    {
        place ??= item.Place;
        var index = draft.NextIndex(kind, place);
        if (place is null && kind.Places.Count > 0)
        {
            problems.Add(item.Piece.At, Messages.PlaceMissing(item.Piece.Text, [.. kind.Places.Select(known => known.Name)]));
        }
        else if (item.Piece.Is("none") || item.Piece.Is("hidden"))
        {
            problems.Add(item.Piece.At, Messages.NoneAmongMembers(item.Piece.Text));
        }
        else if (item.IsUnknown)
        {
            draft.Of(kind, place, index).There(at);
            return;
        }
        else if (_parts.Read(item.Piece, kind) is { } read)
        {
            var member = draft.Of(kind, place, index);
            foreach (var (reading, value, typed) in read)
            {
                member.Add(reading.Name, Reading(reading, value, item.Planned, typed));
            }

            return;
        }

        draft.Torn.Add(kind.Name);
    }

    private void AllPlaces(PartKind kind, Answer answer, At at)
    {
        var items = Piece.Of(answer).Items().Select(piece => Item.Of(piece, kind.Places, vocabulary)).ToList();
        var named = items.Where(item => item.Which == Which.Named).Select(item => item.Place).ToHashSet();
        foreach (var item in items)
        {
            if (item.Which == Which.NotSaid && items.Count > 1)
            {
                problems.Add(item.Piece.At, Messages.PlaceMissing(item.Piece.Text, [.. kind.Places.Select(place => place.Name), "all", "rest"]));
                continue;
            }

            var places = item.Which switch
            {
                Which.Named => [item.Place!],
                Which.Rest => kind.Places.Where(place => !named.Contains(place)),
                _ => kind.Places,
            };
            foreach (var place in places)
            {
                Whole(kind, draft.Of(kind, place), item, at);
            }
        }
    }

    /// <summary>All that an item says of one part.</summary>
    private void Whole(PartKind kind, PartNotes part, Item item, At at)
    {
        if (item.IsUnknown || (item.Piece.Is("yes") && IsNoAnswer("yes", kind)))
        {
            part.There(at);
        }
        else if (item.Piece.Is("none") || (item.Piece.Is("no") && IsNoAnswer("no", kind)))
        {
            part.None(at);
        }
        else if (_parts.Read(item.Piece, kind) is { } read)
        {
            foreach (var (reading, value, typed) in read)
            {
                part.Add(reading.Name, Reading(reading, value, item.Planned, typed));
            }
        }
    }

    private static bool IsNoAnswer(string word, PartKind kind) => !kind.Readings.Any(reading => reading.Choices.Any(choice => choice.Key == word));

    private void OneReading(PartNotes part, ReadingKind reading, Piece piece)
    {
        var item = Item.Of(piece, [], vocabulary);
        if (item.IsUnknown)
        {
            part.There(item.Piece.At);
        }
        else if (values.Read(item.Piece, reading) is { } value)
        {
            part.Add(reading.Name, Reading(reading, value, item.Planned, item.Piece));
        }
    }

    private static Reading Reading(ReadingKind reading, ReadingValue value, bool planned, Piece typed)
    {
        var by = typed.Answer.By;
        return new Reading(value, planned, typed.Text, typed.At, by.ToolFor(reading), by.By, by.Date);
    }

    private void Seen(PartKind kind, Entry entry)
    {
        if (entry.Value is ScalarNode { IsBlank: true })
        {
            return;
        }

        if (entry.Value is not ScalarNode text || Names.Fold(text.Text) is not ("all" or "some"))
        {
            problems.Add(entry.Value.At, Messages.AllOrSome((entry.Value as ScalarNode)?.Text ?? ""));
            return;
        }

        draft.Lists[kind.Name] = (Names.Fold(text.Text) == "all" ? Tri.Yes : Tri.Unknown, entry.Key.At);
    }
}
