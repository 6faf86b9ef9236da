namespace WetCheck.Reporting;

/// <summary>Lines that begin with a label in a column of twelve: <c>Should be   2" or more</c>.</summary>
internal sealed class Labelled(Phrases phrases)
{
    private const int LabelWidth = 12;
    private readonly List<string> _lines = [];

    public void Title(params IEnumerable<string> parts) =>
        _lines.AddRange(Column.Wrap(string.Join(" - ", parts.Where(part => part.Length > 0))));

    /// <summary>Nothing where there is nothing to say.</summary>
    /// <param name="key">Of the label, in the section <c>why</c>.</param>
    public void Add(string key, string text)
    {
        if (text.Length > 0)
        {
            _lines.AddRange(Column.Wrap(text, phrases["why." + key].PadRight(LabelWidth)));
        }
    }

    /// <summary>Several lines under one label.</summary>
    public void Add(string key, IEnumerable<string> texts)
    {
        var label = phrases["why." + key];
        foreach (var text in texts.Where(text => text.Length > 0))
        {
            _lines.AddRange(Column.Wrap(text, label.PadRight(LabelWidth)));
            label = "";
        }
    }

    public void Plain(string text) => _lines.AddRange(Column.Wrap(text));

    public override string ToString() => string.Join('\n', _lines) + "\n";
}
