using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads what one answer says, in the form its question asks for.</summary>
internal sealed class ValueReader(Vocabulary vocabulary, Unit? lone, ProblemList problems, LoneNumbers loneNumbers)
{
    /// <summary>Null, with a problem, where it can't be read.</summary>
    public ReadingValue? Read(Piece piece, ReadingKind reading)
    {
        if (ChoiceOf(piece.Text, reading) is { } choice)
        {
            return new ReadingValue.OfChoice(choice.Key);
        }

        if (piece.Is("none"))
        {
            return new ReadingValue.OfNone();
        }

        if (piece.Is("hidden"))
        {
            return new ReadingValue.OfHidden();
        }

        return reading.Is switch
        {
            Form.Choice => Unknown(piece, reading),
            Form.Height => new HeightReader(vocabulary, lone).Read(piece.Text, reading) is var taken ? Take(taken, piece) : null,
            Form.Fall => Take(FallReader.Read(piece.Text, lone), piece),
            Form.Size => Take(Notation.ReadSize(piece.Text, lone), piece),
            Form.Outline => Take(Notation.ReadOutline(piece.Text, lone), piece),
            Form.Levels => Take(Notation.ReadLevels(piece.Text, lone), piece),
            Form.Point => Take(Notation.ReadPoint(piece.Text, lone), piece),
            _ => Take(Notation.ReadAmount(piece.Text, reading.Measure ?? Measure.Count, lone), piece),
        };
    }

    public static Choice? ChoiceOf(string text, ReadingKind reading)
    {
        var folded = Names.Fold(text);
        return reading.Choices.FirstOrDefault(choice => Names.Fold(choice.Key) == folded)
            ?? reading.Choices.FirstOrDefault(choice => Names.Fold(choice.Say.En) == folded
                || (choice.Say.Es is { } spanish && Names.Fold(spanish) == folded));
    }

    private ReadingValue? Take<T>(Taken<T> taken, Piece piece)
        where T : ReadingValue
    {
        if (taken.IsRead)
        {
            return taken.Value;
        }

        var at = piece.Within(taken.Fault.Offset);
        if (!loneNumbers.Takes(taken.Fault, at))
        {
            problems.Add(at, Messages.Quantity(taken.Fault));
        }

        return null;
    }

    private ReadingValue? Unknown(Piece piece, ReadingKind reading)
    {
        problems.Add(piece.At, Messages.UnknownAnswer(reading.Name, piece.Text, [.. reading.Choices.Select(choice => choice.Key)]));
        return null;
    }
}
