using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads one line of a condition: a reading, and what it is held against.</summary>
internal sealed class TestReader(ConditionReader within, PartKind part)
{
    private ProblemList Problems => within.Problems;

    public IEnumerable<Condition> Read(NamedNode line)
    {
        if (PathReader.Read(line.Key, part, within.Vocabulary, Problems) is not { } path)
        {
            return [];
        }

        return line.Value is MapNode comparisons ? Compare(path, new Fields(comparisons, Problems), line.Key.At) : Is(path, line);
    }

    private IEnumerable<Condition> Is(Model.Path path, NamedNode line)
    {
        if (path.Reading.Is is not (Form.Choice or Form.Conclusion))
        {
            Problems.Add(line.Value.At, Messages.NoChoiceReading(path.Reading.Name));
            return [];
        }

        var choices = new List<string>();
        foreach (var word in Fields.Scalars(line.Value, Problems))
        {
            if (Names.Find(word.Text, path.Reading.Choices.Select(choice => choice.Key)) is { } choice)
            {
                choices.Add(choice);
            }
            else
            {
                Problems.Add(word.At,
                    Messages.UnknownChoice(path.Reading.Name, word.Text,
                    [.. path.Reading.Choices.Select(known => known.Key)]));
            }
        }

        return choices.Count == 0 ? [] : [new Condition.Is(path, choices, line.Key.At)];
    }

    private List<Condition> Compare(Model.Path path, Fields comparisons, At at)
    {
        if (path.Reading.Is is not (Form.Amount or Form.Height or Form.Fall))
        {
            Problems.Add(at, Messages.NoNumberReading(path.Reading.Name));
            return [];
        }

        var read = new List<Condition>();
        foreach (var entry in comparisons.All())
        {
            if (Lookup.Enum<Comparison>(entry.Key, FormWords.Comparisons, "comparison", Problems) is { } by
                && comparisons.Scalar(entry.Key.Text) is { } text
                && new OperandReader(within, part).Read(text, path.Reading) is { } operand)
            {
                read.Add(new Condition.Compare(path, by, operand, entry.Key.At));
            }
        }

        return read;
    }
}
