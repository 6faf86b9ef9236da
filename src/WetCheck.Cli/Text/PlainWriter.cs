using System.Text;

namespace WetCheck.Cli.Text;

/// <summary>Writes text and nothing that moves a cursor or colours a screen, wherever the text came from: what is shown is what a pipe gets.</summary>
internal sealed class PlainWriter(TextWriter inner) : TextWriter(inner.FormatProvider)
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value)
    {
        if (IsText(value))
        {
            inner.Write(value);
        }
    }

    public override void Write(string? value) => inner.Write(Plain(value));

    public override void Write(char[] buffer, int index, int count) => inner.Write(Plain(new string(buffer, index, count)));

    public override void Write(ReadOnlySpan<char> buffer) => inner.Write(Plain(buffer.ToString()));

    public override void WriteLine(string? value) => inner.WriteLine(Plain(value));

    public override void Flush() => inner.Flush();

    private static string? Plain(string? text) => text is null || text.All(IsText) ? text : string.Concat(text.Where(IsText));

    private static bool IsText(char value) => !char.IsControl(value) || value is '\n' or '\r' or '\t';
}
