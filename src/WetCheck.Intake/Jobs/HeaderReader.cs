using System.Globalization;
using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads the lines at the top of a job file.</summary>
internal sealed partial class HeaderReader(Vocabulary vocabulary, ProblemList problems)
{
    private static readonly string[] s_plain = ["job", "method", "units", "stage", "readings by", "notes", "local"];

    private static readonly string[] s_inches = ["inches", "inch", "in"];
    private static readonly string[] s_millimetres = ["millimetres", "millimeters", "mm"];

    /// <summary>The names of all such lines, the disciplines' own among them.</summary>
    public static IReadOnlyList<string> Keys(Vocabulary vocabulary) =>
        [.. s_plain.Take(4), .. vocabulary.Disciplines.Select(KeyOf), .. s_plain.Skip(4)];

    /// <summary>The line for a discipline: <c>plumbing code</c>, <c>access standard</c>.</summary>
    public static string KeyOf(Discipline discipline) => discipline.Say.En;

    /// <summary>The line's own name; null: it is none of the header.</summary>
    public static string? Find(string name, Vocabulary vocabulary) =>
        Names.Find(name, s_plain) ?? (DisciplineOf(name, vocabulary) is { } discipline ? KeyOf(discipline) : null);

    /// <param name="entries">In any order; method before stage is seen to here.</param>
    public Header Read(IReadOnlyDictionary<string, NamedNode> entries, Header header)
    {
        foreach (var (key, entry) in entries.OrderBy(pair => pair.Key == "method" ? 0 : 1))
        {
            header = key == "notes" ? header with { Notes = NotesOf(entry.Value) }
                : key == "local"
                    ? header with
                    {
                        Local = [.. Fields.Scalars(entry.Value, problems)
                    .Where(file => !file.IsBlank && !problems.IsLost(file.At))
                    .Select(file => (file.Text.Trim(), file.At))]
                    }
                : entry.Value is ScalarNode { IsBlank: true } ? header
                : entry.Value is ScalarNode text ? Line(key, text, header)
                : Refuse(entry, header);
        }

        return header;
    }

    /// <summary>What the line <c>readings by</c> of a job says; what can't be read of it was told with the job.</summary>
    public static Provenance ByOf(string? typed, At at, Vocabulary vocabulary) => typed is null ? Provenance.Nobody
        : new HeaderReader(vocabulary, new ProblemList()).ByOf(new ScalarNode(typed, Quoted: false, at.Line, Straight: true, at));

    /// <summary>The header with one line written otherwise; a blank one takes the answer away.</summary>
    public Header Change(string key, NamedNode entry, Header header)
    {
        if (entry.Value is not ScalarNode { IsBlank: true })
        {
            return Read(new Dictionary<string, NamedNode> { [key] = entry }, header);
        }

        return key switch
        {
            "method" => header with { Method = null },
            "stage" => header with { Stage = null },
            "units" => header with { Metric = null },
            _ when DisciplineOf(key, vocabulary) is { } discipline => header with { Codes = With(header.Codes, discipline, null) },
            _ => header,
        };
    }

    private Header Line(string key, ScalarNode text, Header header) => key switch
    {
        "job" => header with { Name = VisibleText.Line(text.Text).Trim() },
        "method" when !problems.IsLost(text.At) => header with { Method = MethodOf(text) },
        "stage" when !problems.IsLost(text.At) => header with { Stage = StageOf(text, header.Method) },
        "units" when !problems.IsLost(text.At) => header with { Metric = UnitsOf(text) },
        "readings by" when !problems.IsLost(text.At) => header with { ReadingsBy = text.Text.Trim(), By = ByOf(text) },
        _ when DisciplineOf(key, vocabulary) is { } discipline && !problems.IsLost(text.At) => header with
        {
            Codes = With(header.Codes, discipline, CodeOf(text, discipline)),
        },
        _ => header,
    };

    private static Discipline? DisciplineOf(string name, Vocabulary vocabulary) => vocabulary.Disciplines.FirstOrDefault(discipline =>
        Names.Same(name, KeyOf(discipline)) || Names.Same(name, discipline.Name + " code")
            || Names.Same(name, discipline.Name + " standard"));

    private Method? MethodOf(ScalarNode text)
    {
        var method =
            vocabulary.Methods.FirstOrDefault(method => Names.Same(method.Name, text.Text)
            || Names.Same(method.Say.En, text.Text));
        if (method is null)
        {
            problems.Add(text.At, Messages.UnknownMethod(text.Text, [.. vocabulary.Methods.Select(known => known.Name)]));
        }

        return method;
    }

    private string? StageOf(ScalarNode text, Method? method)
    {
        var stops = (method?.Stops ?? vocabulary.Methods.SelectMany(known => known.Stops)).Select(stop => stop.Name).Distinct().ToList();
        var stage = Names.Find(text.Text, stops);
        if (stage is null)
        {
            problems.Add(text.At, Messages.UnknownStage(text.Text, method?.Name, stops));
        }

        return stage;
    }

    private bool? UnitsOf(ScalarNode text)
    {
        var isMetric = Names.Find(text.Text, s_millimetres) is not null;
        if (!isMetric && Names.Find(text.Text, s_inches) is null)
        {
            problems.Add(text.At, Messages.UnknownUnits(text.Text));
            return null;
        }

        return isMetric;
    }

    private Provenance ByOf(ScalarNode text)
    {
        var by = Provenance.Nobody;
        foreach (var piece in Piece.Of(new Answer(text, by)).Items())
        {
            if (Dates.LooksLikeOne(piece.Text))
            {
                by = Dates.Read(piece.Text) is null ? Refused(piece.At, Messages.DateForm(piece.Text), by) : by with { Date = piece.Text };
            }
            else if (vocabulary.Tools.FirstOrDefault(tool => Names.Same(tool.Name, piece.Text)
                || Names.Same(tool.Say.En, piece.Text)) is { } tool)
            {
                by = by with { Tool = tool };
            }
            else
            {
                by = by.By is null ? by with { By = piece.Text } : Refused(piece.At, Messages.UnknownTool(piece.Text, vocabulary), by);
            }
        }

        return by;
    }

    private StatedCode? CodeOf(ScalarNode text, Discipline discipline)
    {
        var typed = text.Text.Trim();
        var folded = Names.Fold(typed);
        var family = discipline.Families
            .Where(family => folded == Names.Fold(family.Name)
                || folded.StartsWith(Names.Fold(family.Name) + " ", StringComparison.Ordinal))
            .MaxBy(family => family.Name.Length);
        if (family is null && !typed.Any(char.IsLetter))
        {
            problems.Add(text.At, Messages.CodeName(typed, [.. discipline.Families.Select(known => known.Name)]));
            return null;
        }

        if (family is null)
        {
            var year = YearAtEnd().Match(typed);
            return new StatedCode(year.Success ? typed[..year.Index].TrimEnd() : typed,
                year.Success ? Year(year.Groups[1].Value) : null, typed, text.At, InBook: false);
        }

        var rest = folded[Names.Fold(family.Name).Length..].Trim();
        if (rest.Length == 0 || YearAtEnd().Match(" " + rest) is { Success: true, Index: 0 })
        {
            return new StatedCode(family.Name, rest.Length == 0 ? null : Year(rest), typed, text.At, InBook: true);
        }

        problems.Add(text.Within(Math.Max(0, text.Text.Length - rest.Length)), Messages.CodeWords(family.Name, rest));
        return null;
    }

    private string? NotesOf(Node value) => value switch
    {
        ScalarNode { IsBlank: true } => null,
        ScalarNode text => text.Text.Trim(),
        ListNode list => string.Join('\n', list.Items.OfType<ScalarNode>().Select(item => item.Text.Trim())),
        _ => Refused(value.At, Messages.OneAnswerHere("notes"), (string?)null),
    };

    private static Dictionary<string,
        StatedCode> With(IReadOnlyDictionary<string, StatedCode> codes, Discipline discipline, StatedCode? code)
    {
        var all = new Dictionary<string, StatedCode>(codes, StringComparer.Ordinal);
        all.Remove(discipline.Name);
        if (code is not null)
        {
            all[discipline.Name] = code;
        }

        return all;
    }

    private Header Refuse(NamedNode entry, Header header) => Refused(entry.Value.At, Messages.OneAnswerHere(entry.Key.Text), header);

    private T Refused<T>(At at, Message message, T instead)
    {
        problems.Add(at, message);
        return instead;
    }

    private static int Year(string digits) => int.Parse(digits.Trim(), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\s(\d{4})$")]
    private static partial Regex YearAtEnd();
}
