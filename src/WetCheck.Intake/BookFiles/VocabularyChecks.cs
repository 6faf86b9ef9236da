using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What can only be told of the vocabulary as a whole.</summary>
internal static class VocabularyChecks
{
    public static void Run(Vocabulary vocabulary, ProblemList problems)
    {
        var layers = vocabulary.Methods.SelectMany(method => method.Layers).Select(layer => layer.Name).Distinct().ToList();
        foreach (var kind in vocabulary.Kinds)
        {
            Kind(kind, vocabulary, problems);
            foreach (var reading in kind.Readings)
            {
                foreach (var layer in reading.LayerAt.Values.Append(reading.Layer).OfType<string>().Where(layer => !layers.Contains(layer)))
                {
                    problems.Add(reading.At, Messages.UnknownName("layer", layer, layers));
                }
            }
        }

        foreach (var section in new JobLayout(vocabulary).Sections)
        {
            if (HeaderReader.Find(section.Name, vocabulary) is not null)
            {
                problems.Add(section.Kinds().First().At, Messages.DoubleName("the lines of a job file", section.Name));
            }

            foreach (var clash in section.Lines.GroupBy(line => Names.Fold(line.Name), StringComparer.Ordinal)
                .Where(group => group.Count() > 1))
            {
                problems.Add(clash.Last().Kind.At, Messages.DoubleName($"the lines below {section.Name}:", clash.Key));
            }
        }
    }

    private static void Kind(PartKind kind, Vocabulary vocabulary, ProblemList problems)
    {
        if (kind.Main is { } main && kind.Find(main) is null)
        {
            problems.Add(kind.At,
                Messages.UnknownName($"reading of \"{kind.Name}\"", main,
                [.. kind.Readings.Select(reading => reading.Name)]));
        }

        if (kind.Main is null && (kind.Many != Many.One || kind.Stands.Contains('.', StringComparison.Ordinal)))
        {
            problems.Add(kind.At, Messages.Missing("main"));
        }

        if (kind.Places.Count == 0 && (kind.Many == Many.PerPlace || kind.Stands.Contains('<', StringComparison.Ordinal)))
        {
            problems.Add(kind.At, Messages.Missing("places"));
        }

        var above = kind;
        for (var steps = 0; above?.Above is not null; steps++)
        {
            above = vocabulary.Kind(above.Above);
            if (steps > vocabulary.Kinds.Count)
            {
                problems.Add(kind.At, Messages.AboveItself(kind.Name));
                break;
            }
        }
    }
}
