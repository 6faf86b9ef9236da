using System.CommandLine;
using System.Reflection;
using WetCheck.Cli.Files;

namespace WetCheck.Cli.Commands;

/// <summary><c>wetcheck job sample</c>: an invented job in a file, to try the other commands on.</summary>
internal static class SampleJobCommand
{
    private const string File = "juniper.job.yaml";

    public static Command Build(Terminal terminal)
    {
        var command = new Command("sample", "Write an invented job, juniper, to try the other commands on.");
        command.SetAction(_ => (int)Write(terminal));
        return command;
    }

    private static ExitCode Write(Terminal terminal)
    {
        var text = Text();
        if (System.IO.File.Exists(terminal.FullPath(File)) && TextFile.Read(terminal.FullPath(File), File) == text)
        {
            terminal.Out.WriteLine($"{File} is here already.");
        }
        else
        {
            NewFile.Write(File, text, terminal);
            terminal.Out.WriteLine($"Written: {File}, an invented job.");
        }

        terminal.Out.WriteLine("    wetcheck walk juniper");
        return ExitCode.NothingOwed;
    }

    private static string Text()
    {
        using var reader = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream("sample/" + File)!);
        return reader.ReadToEnd();
    }
}
