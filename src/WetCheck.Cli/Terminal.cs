using System.Text;
using WetCheck.Model;

namespace WetCheck.Cli;

/// <summary>All that the program knows of the machine: where answers come from, where results and messages go, the folder it stands in, the clock.</summary>
internal sealed record Terminal(TextWriter Out, TextWriter Err, string Folder, TimeProvider Clock)
{
    /// <summary>What is typed, or comes from another program: one answer a line.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>A hand types, so that an answer that can't be read may be asked once more; else its line is the next answer's.</summary>
    public bool IsHand { get; init; }

    public static Terminal Real()
    {
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new Terminal(Console.Out, Console.Error, Directory.GetCurrentDirectory(), TimeProvider.System) { In = Console.In, IsHand = !Console.IsInputRedirected };
    }

    /// <summary>No file has a null in its name: such a one is not there, like others.</summary>
    public string FullPath(string path) => System.IO.Path.GetFullPath(path.Replace('\0', VisibleText.Mark), Folder);
}
