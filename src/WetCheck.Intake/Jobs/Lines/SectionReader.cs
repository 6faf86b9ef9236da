namespace WetCheck.Intake;

/// <summary>Reads the lines of one section into the draft.</summary>
internal sealed class SectionReader(JobLayout layout, Draft draft, LineReader lines, ProblemList problems)
{
    public void Read(Section section, NamedNode entry)
    {
        draft.Where[section.Name] = entry.Key.At;
        switch (entry.Value)
        {
            case MapNode map when section.Lines.Count > 0 && !(section.Part?.Main is not null && IsAnswer(section, map)):
                Lines(section, map);
                break;
            case ListNode or MapNode when section.List is null && section.Part?.Main is null && IsHeading(section) is false:
                problems.Add(entry.Value.At, Messages.OneAnswerHere(section.Name));
                break;
            default:
                lines.Bare(section, entry);
                break;
        }
    }

    private void Lines(Section section, MapNode map)
    {
        var found = new Dictionary<Line, NamedNode>(ReferenceEqualityComparer.Instance);
        var twice = new HashSet<Line>(ReferenceEqualityComparer.Instance);
        foreach (var entry in map.Entries)
        {
            if (section.Find(entry.Key.Text, layout.Vocabulary) is not { } line)
            {
                problems.Add(entry.Key.At, Stray(section, entry.Key.Text));
            }
            else if (!found.TryAdd(line, entry))
            {
                problems.Add(entry.Key.At, Messages.Twice(entry.Key.Text, found[line].Key.At.Line));
                twice.Add(line);
            }
        }

        foreach (var (line, entry) in found)
        {
            draft.Where[section.PathOf(line)] = entry.Key.At;
            if (entry.Value is MapNode inner && !AnswerReader.IsLongForm(inner) && inner.Entries is [var first, ..]
                && section.Find(first.Key.Text, layout.Vocabulary) is not null)
            {
                problems.Add(first.Key.At, Messages.OddIndent(first.Key.At.Column - 1, entry.Key.At.Column - 1, entry.Key.Text));
            }
            else if (!twice.Contains(line))
            {
                lines.Read(line, entry);
            }
        }
    }

    private bool IsAnswer(Section section, MapNode map) =>
        AnswerReader.IsLongForm(map) && map.Entries.All(entry => section.Find(entry.Key.Text, layout.Vocabulary) is null);

    private static bool IsHeading(Section section) => section.Part is null;

    private Message Stray(Section section, string name)
    {
        var known = section.Lines.Select(line => line.Name).ToList();
        var elsewhere = layout.Sections.FirstOrDefault(other => other != section && other.Find(name, layout.Vocabulary) is not null);
        return Names.Nearest(name, known) is null && elsewhere is not null
            ? Messages.StandsElsewhere(section.Name, name, elsewhere.Name)
            : Messages.UnknownQuestion(section.Name, name, known);
    }
}
