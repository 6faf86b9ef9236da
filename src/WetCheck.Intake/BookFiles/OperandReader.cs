using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads what a number is held against: a quantity, <c>limit</c>, either of them above a datum, or another reading.</summary>
internal sealed class OperandReader(ConditionReader within, PartKind part)
{
    private const string Above = " above ";

    private ProblemList Problems => within.Problems;

    public Operand? Read(ScalarNode text, ReadingKind of)
    {
        // "limit" is the version's even where the part has a reading of that name.
        if (!Names.Same(text.Text, "limit") && PathReader.IsPath(text.Text, part, within.Vocabulary))
        {
            return PathReader.Read(text, part, within.Vocabulary, Problems) is { } path ? Other(path, text, of) : null;
        }

        var above = text.Text.IndexOf(Above, StringComparison.Ordinal);
        var number = above < 0 ? text : text with { Text = text.Text[..above] };
        var (isFit, datum) = Datum(text, above, of);
        if (!isFit)
        {
            return null;
        }

        if (Names.Same(number.Text, "limit"))
        {
            if (!within.Limit)
            {
                Problems.Add(text.At, Messages.LimitOutside());
                return null;
            }

            return new Operand.Limit(datum);
        }

        return of.Measure is { } measure && Fields.ReadQuantity(number, measure, Problems) is { } quantity
            ? new Operand.Fixed(quantity, datum) : null;
    }

    private (bool IsFit, string? Datum) Datum(ScalarNode text, int above, ReadingKind of)
    {
        if (above < 0)
        {
            if (of.Is == Form.Height)
            {
                Problems.Add(text.At, Messages.NoDatum(of.Name));
            }

            return (of.Is != Form.Height, null);
        }

        var at = above + Above.Length;
        var name = text with { Text = text.Text[at..], At = text.Within(at), Quoted = false };
        var datum = Lookup.In(within.Vocabulary.Datums, name, known => known.Name, "datum", Problems);
        if (datum is not null && of.Is != Form.Height)
        {
            Problems.Add(text.At, Messages.DatumNotWanted(of.Name));
        }

        return (datum is not null && of.Is == Form.Height, datum?.Name);
    }

    private Operand.Of? Other(Model.Path path, ScalarNode text, ReadingKind of)
    {
        if (path.Reading.Measure == of.Measure && path.Reading.Measure is not null
            && path.Reading.Is is Form.Amount or Form.Height or Form.Fall && (path.Reading.Is == Form.Height) == (of.Is == Form.Height))
        {
            return new Operand.Of(path);
        }

        Problems.Add(text.At, Messages.OtherMeasure(of.Name, text.Text));
        return null;
    }
}
