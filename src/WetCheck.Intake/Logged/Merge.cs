using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Puts what one answer says to what was said before.</summary>
internal static class Merge
{
    /// <param name="replaces">What stood before on the facts of the answer is history.</param>
    public static void Into(Draft draft, Draft said, Section section, Line? line, Vocabulary vocabulary, bool replaces)
    {
        foreach (var list in ListsOf(section, line).Where(kind => replaces || kind.WholeWhenGiven))
        {
            draft.Forget(list, (line as Line.OfPlace)?.Place);
        }

        foreach (var (name, list) in said.Lists)
        {
            draft.Lists[name] = list;
            if (list.Whole != Tri.Yes)
            {
                draft.Lists.Remove(name);
            }
        }

        var before = said.All.Where(one => one.Notes.Index is not null).Select(one => one.Kind).Distinct()
            .ToDictionary(kind => kind, kind => draft.Members(vocabulary.Kind(kind)!).ToList(), StringComparer.Ordinal);
        foreach (var (name, notes) in said.All)
        {
            var kind = vocabulary.Kind(name)!;
            var index = notes.Index is { } own ? own + Last(kind, notes.Place, before[name]) : (int?)null;
            Part(draft, kind, notes, index, replaces);
        }
    }

    /// <summary>One member of a list: another reading of it, one in the place of those before, or it is gone.</summary>
    public static void Member(Draft draft, Draft said, MemberPath member, bool isGone, bool replaces)
    {
        if (isGone)
        {
            draft.Forget(member.Kind, member.Place, member.Index);
        }

        foreach (var notes in said.Members(member.Kind).ToList())
        {
            Part(draft, member.Kind, notes, member.Index, replaces);
        }
    }

    /// <summary>Lists whose members stand on the line.</summary>
    private static IEnumerable<PartKind> ListsOf(Section section, Line? line) => line switch
    {
        Line.OfPlace { Kind.IsList: true } or Line.OfKind { Kind.IsList: true } => [line.Kind],
        null => section.Kinds().Where(kind => kind.IsList),
        _ => [],
    };

    /// <summary>Members that come later are counted on.</summary>
    private static int Last(PartKind kind, Place? place, List<PartNotes> before) =>
        before.Where(member => kind.Many == Many.Ordered || member.Place == place).Select(member => member.Index!.Value)
            .DefaultIfEmpty(0).Max();

    private static void Part(Draft draft, PartKind kind, PartNotes notes, int? index, bool replaces)
    {
        if (notes.NoneAt is { } none)
        {
            if (replaces)
            {
                draft.Forget(kind, notes.Place);
            }

            draft.Of(kind, notes.Place, index).None(none);
            return;
        }

        var part = draft.Of(kind, notes.Place, index);
        part.There(notes.At!);
        foreach (var (name, readings) in notes.Readings)
        {
            if (replaces)
            {
                part.Readings.Remove(name);
            }

            foreach (var reading in readings)
            {
                part.Add(name, reading);
            }
        }
    }
}
