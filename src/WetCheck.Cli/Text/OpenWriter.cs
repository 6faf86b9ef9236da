using System.Text;

namespace WetCheck.Cli.Text;

/// <summary>
/// Writes to a stream of the system. Where it takes no more, the program ends with a word about it and not with a
/// trace.
/// </summary>
/// <param name="isLast">What can't be said here can be said nowhere: it is dropped.</param>
internal sealed class OpenWriter(TextWriter inner, bool isLast) : TextWriter(inner.FormatProvider)
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void WriteLine(string? value) => Write(value + CoreNewLine.AsSpan().ToString());

    public override void Flush() => Try(inner.Flush);

    /// <summary>Where a stream was closed before the program began; it takes nothing.</summary>
    public static TextWriter Closed { get; } = new OpenWriter(new ClosedWriter(), isLast: false);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            if (!isLast)
            {
                throw new Halt(ExitCode.Unwritable, "What was to be shown can't be written: where it was sent is full, or closed.");
            }
        }
    }

    private sealed class ClosedWriter : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException();
    }
}
