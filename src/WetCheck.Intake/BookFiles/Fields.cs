using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>The lines of one mapping of a book file, taken by name; what nobody took is a problem at the end.</summary>
internal sealed class Fields
{
    private readonly MapNode _map;
    private readonly HashSet<NamedNode> _taken = new(ReferenceEqualityComparer.Instance);
    private readonly List<string> _asked = [];

    public Fields(MapNode map, ProblemList problems)
    {
        _map = map;
        Problems = problems;
    }

    public ProblemList Problems { get; }

    public At At => _map.At;

    public static Fields? Of(Node? node, ProblemList problems)
    {
        if (node is null)
        {
            return null;
        }

        if (node is MapNode map)
        {
            return new Fields(map, problems);
        }

        problems.Add(node.At, Messages.NamesWanted());
        return null;
    }

    public Node? Take(string name)
    {
        _asked.Add(name);
        var entry = _map.Entries.FirstOrDefault(entry => Names.Same(entry.Key.Text, name));
        if (entry is null || entry.Value is ScalarNode { IsBlank: true })
        {
            return null;
        }

        _taken.Add(entry);
        return entry.Value;
    }

    public At AtOf(string name) => _map.Entries.FirstOrDefault(entry => Names.Same(entry.Key.Text, name))?.Key.At ?? At;

    public bool Has(string name) => Take(name) is not null;

    public ScalarNode? Scalar(string name) => Take(name) switch
    {
        null => null,
        ScalarNode scalar => scalar,
        var other => Refuse(other),
    };

    public string? Text(string name) => Scalar(name)?.Text;

    /// <summary>A line that must be there, whatever it holds.</summary>
    public void Demand(string name)
    {
        if (!Has(name))
        {
            Problems.Add(At, Messages.Missing(name));
        }
    }

    /// <summary>A text that must be there; empty, with a problem, where it is not.</summary>
    public string Need(string name)
    {
        Demand(name);
        return Text(name) ?? "";
    }

    public bool Yes(string name) => Scalar(name) is { } said && IsYes(said);

    /// <summary>One text or a list of them.</summary>
    public IReadOnlyList<ScalarNode> Texts(string name) => Scalars(Take(name), Problems);

    public IReadOnlyList<Fields> Maps(string name) =>
        Take(name) switch
        {
            null => [],
            ListNode list => [.. list.Items.Select(item => Of(item, Problems)).OfType<Fields>()],
            var other => Of(other, Problems) is { } one ? [one] : [],
        };

    public Fields? Map(string name) => Of(Take(name), Problems);

    /// <summary>The lines, in file order, whatever their names.</summary>
    public IReadOnlyList<NamedNode> All()
    {
        _taken.UnionWith(_map.Entries);
        return _map.Entries;
    }

    /// <summary>The lines that were not taken yet.</summary>
    public IReadOnlyList<NamedNode> Rest()
    {
        var rest = _map.Entries.Where(entry => !_taken.Contains(entry)).ToList();
        _taken.UnionWith(rest);
        return rest;
    }

    /// <summary>A text in each language it has: <c>{ en:, es: }</c>.</summary>
    public Words Words(string name)
    {
        switch (Take(name))
        {
            case null:
                return Model.Words.None;
            case ScalarNode scalar:
                return new Words(scalar.Text);
            case MapNode map:
                var languages = new Fields(map, Problems);
                var words = new Words(languages.Need("en"), languages.Text("es"));
                languages.Done();
                return words;
            case var other:
                Refuse(other);
                return Model.Words.None;
        }
    }

    /// <summary>A quantity of a measure; null where there is none.</summary>
    public Quantity? Quantity(string name, Measure? measure) =>
        Scalar(name) is { } text && measure is { } known ? ReadQuantity(text, known, Problems) : null;

    /// <summary>Names what nobody asked for.</summary>
    public void Done()
    {
        foreach (var entry in _map.Entries)
        {
            if (!_taken.Contains(entry) && !_asked.Exists(name => Names.Same(name, entry.Key.Text)))
            {
                Problems.Add(entry.Key.At, Messages.UnknownLine(entry.Key.Text, _asked));
            }
        }
    }

    public static Quantity? ReadQuantity(ScalarNode text, Measure measure, ProblemList problems)
    {
        var taken = Notation.ReadQuantity(text.Text, measure);
        if (!taken.IsRead)
        {
            problems.Add(text.Within(taken.Fault.Offset), Messages.BookQuantity(taken.Fault));
            return null;
        }

        return taken.Value;
    }

    public static IReadOnlyList<ScalarNode> Scalars(Node? node, ProblemList problems)
    {
        switch (node)
        {
            case null:
                return [];
            case ScalarNode one:
                return [one];
            case ListNode list:
                foreach (var odd in list.Items.Where(item => item is not ScalarNode))
                {
                    problems.Add(odd.At, Messages.TextWanted());
                }

                return [.. list.Items.OfType<ScalarNode>()];
            default:
                problems.Add(node.At, Messages.TextWanted());
                return [];
        }
    }

    private bool IsYes(ScalarNode said)
    {
        if (Names.Fold(said.Text) is not ("yes" or "true" or "no" or "false"))
        {
            Problems.Add(said.At, Messages.YesOrNo(said.Text));
        }

        return Names.Fold(said.Text) is "yes" or "true";
    }

    private ScalarNode? Refuse(Node node)
    {
        Problems.Add(node.At, Messages.TextWanted());
        return null;
    }
}
