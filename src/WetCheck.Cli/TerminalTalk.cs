namespace WetCheck.Cli;

/// <summary>A terminal as one that answers.</summary>
internal sealed class TerminalTalk(Terminal terminal) : ITalk
{
    public bool IsHand => terminal.IsHand;

    public DateTimeOffset Now => terminal.Clock.GetLocalNow();

    public string? Hear() => terminal.In.ReadLine();

    public void Say(string line) => terminal.Out.WriteLine(line);

    public void Warn(string text) => terminal.Err.WriteLine(text);
}
