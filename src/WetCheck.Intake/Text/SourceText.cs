using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>A file's name and text, and its lines as typed.</summary>
internal sealed class SourceText
{
    private readonly string[] _lines;

    public SourceText(string file, string text)
    {
        File = VisibleText.Line(file);
        Text = text.TrimStart('\uFEFF');
        _lines = Text.Split(["\r\n", "\n", "\r"], StringSplitOptions.None);
    }

    public string File { get; }

    public string Text { get; }

    public IReadOnlyList<string> Lines => _lines;

    /// <summary>A line as typed, counted from 1; empty where there is none.</summary>
    public string Line(int number) => number >= 1 && number <= _lines.Length ? _lines[number - 1] : "";

    public At Place(int line, int column) => new(File, line, column);
}
