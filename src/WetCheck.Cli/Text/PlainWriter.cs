using System.Text;

namespace WetCheck.Cli.Text;

/// <summary>Writes text and nothing that moves a cursor or colours a screen, wherever the text came from: what is shown is what a pipe gets.</summary>
internal sealed class PlainWriter(TextWriter inner) : TextWriter(inner.FormatProvider)
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value)
    {
        if (!char.IsControl(value) || value is '\n' or '\r' or '\t')
        {
            inner.Write(value);
        }
    }

    public override void Write(string? value) => Write(value.AsSpan());

    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    public override void Write(ReadOnlySpan<char> buffer)
    {
        foreach (var character in buffer)
        {
            Write(character);
        }
    }

    public override void Flush() => inner.Flush();
}
