using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>One member of a list: its line, and its number among those that stand there, from 1. <c>nails.left 2</c>.</summary>
internal sealed record MemberPath(string Line, PartKind Kind, Place? Place, int Index)
{
    /// <summary>Null: the path names no member.</summary>
    public static MemberPath? Of(string path, JobLayout layout)
    {
        var blank = path.TrimEnd().LastIndexOf(' ');
        if (blank < 0 || !int.TryParse(path[(blank + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var index) || index < 1)
        {
            return null;
        }

        var line = path[..blank].TrimEnd();
        return layout.Find(line, out _) switch
        {
            (_, Line.OfPlace { Kind: { IsList: true } kind, Place: var place }) => new MemberPath(line, kind, place, index),
            (_, Line.OfKind { Kind: { IsList: true } kind }) => new MemberPath(line, kind, null, index),
            ({ List: { } list }, null) => new MemberPath(line, list, null, index),
            _ => null,
        };
    }
}
