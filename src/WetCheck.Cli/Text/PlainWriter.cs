using System.Text;

namespace WetCheck.Cli.Text;

/// <summary>
/// Writes what can be seen and nothing that moves a cursor or colours a screen, wherever the text came from: what is
/// shown is what a pipe gets.
/// What can't be seen is <see cref="PlainText"/>'s to tell.
/// </summary>
internal sealed class PlainWriter(TextWriter inner) : TextWriter(inner.FormatProvider)
{
    public override Encoding Encoding => inner.Encoding;

    /// <summary>Halves of a pair come one by one.</summary>
    public override void Write(char value) => inner.Write(PlainText.IsUnseen(value) ? PlainText.Mark : value);

    public override void Write(string? value) => inner.Write(Plain(value));

    public override void Write(char[] buffer, int index, int count) => inner.Write(Plain(new string(buffer, index, count)));

    public override void Write(ReadOnlySpan<char> buffer) => inner.Write(Plain(buffer.ToString()));

    public override void WriteLine(string? value) => inner.WriteLine(Plain(value));

    public override void Flush() => inner.Flush();

    private static string? Plain(string? text) => text is null ? null : PlainText.Of(text);
}
