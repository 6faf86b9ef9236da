using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads the answers of one line into the draft.</summary>
internal sealed class LineReader(Draft draft, AnswerReader answers, PartLines parts, ListLines lists, ProblemList problems)
{
    public void Read(Line line, NamedNode entry)
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
                    parts.OneReading(draft.Of(kind), reading, answer);
                    break;
                case Line.OfPlace { Kind: { IsList: true } kind, Place: var place }:
                    lists.Members(kind, place, answer, at);
                    break;
                case Line.OfPlace { Kind: var kind, Place: var place }:
                    parts.Whole(kind, draft.Of(kind, place), answer, at);
                    break;
                case Line.OfKind { Kind: { IsList: true } kind }:
                    lists.Members(kind, null, answer, at);
                    break;
                case Line.OfKind { Kind: { Many: Many.PerPlace } kind }:
                    parts.AllPlaces(kind, answer, at);
                    break;
                case Line.OfKind { Kind: var kind }:
                    parts.Whole(kind, draft.Of(kind), answer, at);
                    break;
            }
        }
    }

    /// <summary>A section answered on its own line: its list, its one part, or all that stands below the heading.</summary>
    public void Bare(Section section, NamedNode entry)
    {
        var at = entry.Key.At;
        foreach (var answer in answers.Read(entry.Value))
        {
            if (section.List is { } list)
            {
                lists.Members(list, null, answer, at);
            }
            else if (section.Part is { } part)
            {
                parts.OfSection(part, section, answer, at);
            }
            else
            {
                Below(section, answer, at);
            }
        }
    }

    /// <summary><c>seams: none</c>, or items each with its place.</summary>
    private void Below(Section section, Answer answer, At at)
    {
        foreach (var kind in section.Kinds())
        {
            if (kind.IsList)
            {
                lists.Members(kind, null, answer, at);
            }
            else
            {
                parts.AllPlaces(kind, answer, at);
            }
        }
    }

    private void Seen(PartKind kind, NamedNode entry)
    {
        if (entry.Value is ScalarNode { IsBlank: true })
        {
            return;
        }

        if (entry.Value is not ScalarNode text || Names.Fold(text.Text) is not ("all" or "some"))
        {
            problems.Add(entry.Value.At, Messages.AllOrSome((entry.Value as ScalarNode)?.Text ?? ""));
        }
        else if (!problems.IsLost(text.At))
        {
            draft.Lists[kind.Name] = (Names.Fold(text.Text) == "all" ? Tri.Yes : Tri.Unknown, entry.Key.At);
        }
    }
}
