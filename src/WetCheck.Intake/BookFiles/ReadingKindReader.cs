using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads one reading of a kind of part.</summary>
internal sealed partial class ReadingKindReader(IReadOnlyList<Place> places, IReadOnlyList<Tool> tools, IReadOnlyList<Datum> datums)
{
    public ReadingKind? Read(ScalarNode name, Node node, ProblemList problems)
    {
        if (Fields.Of(node, problems) is not { } fields)
        {
            return null;
        }

        fields.Demand("is");
        var form = Lookup.Enum<Form>(fields.Scalar("is"), FormWords.Forms, "form of answer", problems) ?? Form.Choice;
        var measure = MeasureOf(form, fields);
        var derived = fields.Yes("derived");
        var isAsked = !derived && form != Form.Conclusion;
        if (isAsked)
        {
            foreach (var needed in new[] { "ask", "tool", "effort", "example" })
            {
                fields.Demand(needed);
            }
        }

        var reading = new ReadingKind(
            name.Text,
            form,
            measure,
            ChoicesOf(form, fields),
            form == Form.Height && isAsked ? Datum(fields, "from", needed: true) : Datum(fields, "from"),
            Datum(fields, "lifts"),
            fields.Quantity("least", measure),
            fields.Text("layer"),
            LayersOf(fields.Map("layer at")),
            derived,
            Lookup.In(tools, fields.Scalar("tool"), tool => tool.Name, "tool", problems),
            Lookup.Enum<Effort>(fields.Scalar("effort"), FormWords.Efforts, "effort", problems) ?? Effort.Ask,
            BelievableOf(fields, measure),
            fields.Words("ask"),
            fields.Words("how"),
            fields.Words("gloss"),
            fields.Words("proof"),
            fields.Text("example") ?? "",
            name.At)
        {
            AskedBy = fields.Text("asked by"),
        };
        var brief = fields.Words("brief");
        fields.Done();
        return brief.En.Length == 0 ? reading : reading with { Brief = brief };
    }

    private static Measure? MeasureOf(Form form, Fields fields)
    {
        if (form == Form.Amount)
        {
            fields.Demand("measure");
        }

        return form == Form.Amount
            ? Lookup.Enum<Measure>(fields.Scalar("measure"), FormWords.Measures, "measure", fields.Problems)
            : FormWords.MeasureOf(form);
    }

    private static IReadOnlyList<Choice> ChoicesOf(Form form, Fields fields)
    {
        if (form == Form.Conclusion)
        {
            return [new Choice("yes", new Words("yes", "sí")), new Choice("no", new Words("no", "no"))];
        }

        if (form != Form.Choice)
        {
            return [];
        }

        if (fields.Take("choices") is MapNode map)
        {
            return [.. new Fields(map, fields.Problems).All()
                .Select(entry => new Choice(entry.Key.Text, ChoiceWords(entry, fields.Problems)))];
        }

        var words = fields.Texts("choices");
        fields.Demand("choices");

        return [.. words.Select(word => new Choice(word.Text, new Words(word.Text)))];
    }

    private static Words ChoiceWords(NamedNode choice, ProblemList problems)
    {
        if (choice.Value is ScalarNode scalar)
        {
            return new Words(scalar.IsBlank ? choice.Key.Text : scalar.Text);
        }

        if (Fields.Of(choice.Value, problems) is not { } fields)
        {
            return Words.None;
        }

        var words = new Words(fields.Text("en") ?? choice.Key.Text, fields.Text("es"));
        fields.Done();
        return words;
    }

    private string? Datum(Fields fields, string line, bool needed = false)
    {
        if (needed)
        {
            fields.Demand(line);
        }

        return Lookup.In(datums, fields.Scalar(line), datum => datum.Name, "datum", fields.Problems)?.Name;
    }

    private Dictionary<string, string> LayersOf(Fields? layers)
    {
        var read = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in layers?.All() ?? [])
        {
            if (Lookup.In(places, entry.Key, place => place.Name, "place", layers!.Problems) is { } place)
            {
                read[place.Name] = layers.Text(entry.Key.Text) ?? "";
            }
        }

        return read;
    }

    private static (Quantity, Quantity)? BelievableOf(Fields fields, Measure? measure)
    {
        if (fields.Scalar("believable") is not { } text || measure is not { } known)
        {
            return null;
        }

        if (Range().Match(text.Text) is not { Success: true } range)
        {
            fields.Problems.Add(text.At, Messages.RangeWanted(text.Text));
            return null;
        }

        var least = Fields.ReadQuantity(Part(text, range.Groups[1]), known, fields.Problems);
        var most = Fields.ReadQuantity(Part(text, range.Groups[2]), known, fields.Problems);
        return least is { } from && most is { } to ? (from, to) : null;
    }

    private static ScalarNode Part(ScalarNode text, Group part) => text with
    {
        Text = part.Value,
        At = text.Within(part.Index),
        Quoted = false,
    };

    [GeneratedRegex(@"^(.+?)\s+to\s+(.+)$")]
    private static partial Regex Range();
}
