using WetCheck.Tests.Conventions;
using YamlDotNet.RepresentationModel;

namespace WetCheck.Tests.Shows;

/// <summary>
/// A list of rows in <c>tests/jobs</c>: what a job says and what must be said of it, written by hand before the first run. A job is
/// given back as YAML text, so that it is read as any other job file.
/// </summary>
internal sealed class PlannedRows
{
    private readonly List<YamlMappingNode> _rows;

    public PlannedRows(string file)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(Repository.Read(file)));
        _rows = [.. ((YamlSequenceNode)stream.Documents[0].RootNode).Children.Cast<YamlMappingNode>()];
    }

    public IEnumerable<PlannedRow> All => _rows.Select(row => new PlannedRow(row));

    public PlannedRow this[string row] => All.Single(one => one["row"] == row);

    public TheoryData<string> Names => [.. All.Select(row => row["row"]!)];
}

/// <summary>One row, or one part of it. What is not written is null, or nothing.</summary>
internal sealed class PlannedRow(YamlMappingNode node)
{
    public string? this[string key] => Node(key) is { } found ? Text(found) : null;

    public IReadOnlyList<string> List(string key) => Node(key) switch
    {
        null => [],
        YamlSequenceNode list => [.. list.Children.Select(Text)],
        var one => [Text(one)],
    };

    public IReadOnlyList<PlannedRow> Parts(string key) =>
        Node(key) is YamlSequenceNode list ? [.. list.Children.Cast<YamlMappingNode>().Select(part => new PlannedRow(part))] : [];

    private YamlNode? Node(string key) => node.Children.TryGetValue(new YamlScalarNode(key), out var found) ? found : null;

    private static string Text(YamlNode found)
    {
        if (found is YamlScalarNode { Value: { } value })
        {
            return value;
        }

        var text = new StringWriter();
        new YamlStream(new YamlDocument(found)).Save(text, assignAnchors: false);
        return text.ToString();
    }
}
