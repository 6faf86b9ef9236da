using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads what a line says of one part, or of the parts at several places.</summary>
internal sealed class PartLines(Vocabulary vocabulary, Draft draft, ValueReader values, ProblemList problems)
{
    private readonly PartReader _parts = new(values, problems);

    /// <summary>The answer to one question.</summary>
    public void OneReading(PartNotes part, ReadingKind reading, Answer answer)
    {
        var item = Item.Of(Piece.Of(answer), [], vocabulary);
        if (item.IsUnknown)
        {
            part.There(item.Piece.At);
        }
        else if (values.Read(item.Piece, reading) is { } value)
        {
            part.Add(reading.Name, Reading(reading, value, item.Planned, item.Piece));
        }
    }

    /// <summary>All that an answer says of one part.</summary>
    public void Whole(PartKind kind, PartNotes part, Answer answer, At at) =>
        Whole(kind, part, Item.Of(Piece.Of(answer), [], vocabulary), at);

    /// <summary>The one part of a section, answered on the section's line.</summary>
    public void OfSection(PartKind kind, Section section, Answer answer, At at)
    {
        var piece = Piece.Of(answer);
        if (kind.Main is null && !(piece.Is("none") || piece.Is("?") || piece.Is("yes") || piece.Is("no")))
        {
            problems.Add(piece.At, Messages.SayWhichBelow(section.Name, piece.Text, [.. section.Lines.Select(line => line.Name)]));
            return;
        }

        Whole(kind, draft.Of(kind), answer, at);
    }

    /// <summary>Items by place: <c>left-back cut, rest folded</c>.</summary>
    public void AllPlaces(PartKind kind, Answer answer, At at)
    {
        var items = Piece.Of(answer).Items().Select(piece => Item.Of(piece, kind.Places, vocabulary)).ToList();
        var named = items.Where(item => item.Which == Which.Named).Select(item => item.Place).ToHashSet();
        foreach (var item in items)
        {
            if (item.Which == Which.NotSaid && items.Count > 1)
            {
                problems.Add(item.Piece.At,
                    Messages.PlaceMissing(item.Piece.Text,
                    [.. kind.Places.Select(place => place.Name), "all", "rest"]));
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

    /// <summary>The readings of an item; null, with a problem, where one of them can't be read.</summary>
    public IReadOnlyList<(string Name, Reading Reading)>? Read(Item item, PartKind kind) =>
        _parts.Read(item.Piece, kind) is { } read
            ? [.. read.Select(one => (one.Reading.Name, Reading(one.Reading, one.Value, item.Planned, one.Typed)))]
            : null;

    private void Whole(PartKind kind, PartNotes part, Item item, At at)
    {
        var isNone = item.Piece.Is("none") || (item.Piece.Is("no") && !IsChoice("no", kind));
        if (item.IsUnknown || (item.Piece.Is("yes") && !IsChoice("yes", kind)))
        {
            part.There(at);
        }
        else if (isNone && item.Planned)
        {
            problems.Add(item.Piece.At, Messages.PlanOfNone(item.Piece.Text));
        }
        else if (isNone)
        {
            part.None(at);
        }
        else
        {
            foreach (var (name, reading) in Read(item, kind) ?? [])
            {
                part.Add(name, reading);
            }
        }
    }

    private static bool IsChoice(string word, PartKind kind) =>
        kind.Readings.Any(reading => reading.Choices.Any(choice => choice.Key == word));

    private Reading Reading(ReadingKind reading, ReadingValue value, bool planned, Piece typed)
    {
        var by = typed.Answer.By;
        if (by.IsOdd(reading))
        {
            problems.Add(typed.At, Messages.ToolWithoutMarks(by.Tool!.Name, reading.Tool!.Name));
        }

        return new Reading(value, planned, typed.Text, typed.At, by.ToolFor(reading), by.By, by.Date) { Photo = by.Photo };
    }
}
