using System.Diagnostics;
using WetCheck.Cli;

namespace WetCheck.Tests.Cli;

/// <summary>
/// The program run by a shell in a folder, for what only the system does: streams, limits, kinds of files.
/// </summary>
internal static class Shell
{
    /// <summary>Far more than any run takes on a busy machine: what passes it hangs.</summary>
    private static readonly TimeSpan Watchdog = TimeSpan.FromSeconds(60);

    /// <param name="script">In it <c>wetcheck</c> is the program.</param>
    public static Ran Run(Desk desk, string script)
    {
        var start = new ProcessStartInfo("bash",
            ["-c", $"wetcheck() {{ dotnet '{typeof(Terminal).Assembly.Location}' \"$@\"; }}; {script}"])
        {
            WorkingDirectory = desk.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        using var run = Process.Start(start)!;
        run.StandardInput.Close();
        var (results, messages) = (run.StandardOutput.ReadToEndAsync(), run.StandardError.ReadToEndAsync());
        if (!run.WaitForExit(Watchdog))
        {
            run.Kill(entireProcessTree: true);
            Assert.Fail($"{script} did not end.");
        }

        return new Ran(run.ExitCode, results.Result, messages.Result);
    }
}
