using System.Text;
using WetCheck.Cli.Files;
using WetCheck.Cli.Text;

namespace WetCheck.Cli;

/// <summary>
/// All that the program knows of the machine: where answers come from, where results and messages go, the folder it
/// stands in, the clock.
/// </summary>
internal sealed record Terminal(TextWriter Out, TextWriter Err, string Folder, TimeProvider Clock)
{
    /// <summary>What is typed, or comes from another program: one answer a line.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>A hand types, so that an answer that can't be read may be asked once more; else its line is the next answer's.</summary>
    public bool IsHand { get; init; }

    public DateTimeOffset Now => Clock.GetLocalNow();

    public static Terminal Real()
    {
        if (SystemCalls.IsHandedDown(1))
        {
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        }

        var (hears, shows, tells) = (SystemCalls.IsHandedDown(0), SystemCalls.IsHandedDown(1), SystemCalls.IsHandedDown(2));
        var isHand = hears && !Console.IsInputRedirected;
        return new Terminal(
            shows ? new OpenWriter(Console.Out, isLast: false) : OpenWriter.Closed,
            tells ? new OpenWriter(Console.Error, isLast: true) : TextWriter.Null,
            Here(),
            TimeProvider.System)
        {
            In = isHand ? Console.In : hears ? new TypedLines(Console.In) : TextReader.Null,
            IsHand = isHand,
        };
    }

    /// <summary>A folder that was taken away while a shell stands in it has no name.</summary>
    private static string Here()
    {
        try
        {
            return Directory.GetCurrentDirectory();
        }
        catch (Exception fault) when (DiskFault.Is(fault))
        {
            return System.IO.Path.DirectorySeparatorChar.ToString();
        }
    }

    /// <summary>No file has a null in its name: such a one is not there, like others.</summary>
    public string FullPath(string path) => System.IO.Path.GetFullPath(path.Replace('\0', PlainText.Mark), Folder);
}
