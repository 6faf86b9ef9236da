namespace WetCheck.Intake;

/// <summary>The files of a book, in ordinal order of path, each read once.</summary>
internal sealed class Shelf
{
    private readonly ProblemList _problems;
    private readonly SortedDictionary<string, SourceText> _sources = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Node?> _roots = new(StringComparer.Ordinal);

    public Shelf(IReadOnlyList<(string Path, string Text)> files, ProblemList problems)
    {
        _problems = problems;
        Raw = [.. files.Select(file => (file.Path.Replace('\\', '/'), file.Text))];
        foreach (var (path, text) in Raw.Where(file => file.Path.EndsWith(".yaml", StringComparison.Ordinal))
            .OrderBy(file => file.Path, StringComparer.Ordinal))
        {
            var source = new SourceText(path, text);
            problems.Open(source);
            _sources[path] = source;
        }
    }

    public IReadOnlyList<(string Path, string Text)> Raw { get; }

    /// <summary>Of YAML files only.</summary>
    public IEnumerable<string> Paths => _sources.Keys;

    public bool Has(string path) => _sources.ContainsKey(path);

    public SourceText Source(string path) => _sources[path];

    /// <summary>Null where there is no such file, it is empty, or it can't be read.</summary>
    public Node? Root(string path)
    {
        if (!_sources.TryGetValue(path, out var source))
        {
            return null;
        }

        if (!_roots.TryGetValue(path, out var root))
        {
            _roots[path] = root = Document.Read(source, _problems);
        }

        return root;
    }

    public IReadOnlyList<Node?> Roots(string folder) =>
        [.. Paths.Where(path => path.StartsWith(folder, StringComparison.Ordinal)).Select(Root)];
}
