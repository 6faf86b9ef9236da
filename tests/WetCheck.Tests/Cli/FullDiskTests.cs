using System.Diagnostics;
using WetCheck.Cli;

namespace WetCheck.Tests.Cli;

/// <summary>A disk that takes no more: what was kept stays whole, and what was not is given back.</summary>
public sealed class FullDiskTests
{
    [Fact]
    public void Half_an_answer_is_taken_off_again_and_the_answer_is_given_back()
    {
        using var desk = new Desk();
        var log = desk.PathOf("juniper.log.jsonl");
        desk.Run("look", "juniper", "214-D", "3").Code.Should().NotBe(5);
        var whole = File.ReadAllText(log);

        // So many lines of it that the next one would pass 1024 bytes, and half of it still finds room.
        var full = string.Concat(Enumerable.Range(0, 980 / whole.Length).Select(i => whole.Replace("16:05:00", $"16:05:{i:00}", StringComparison.Ordinal)));
        File.WriteAllText(log, full);
        var (code, said, messages) = Limited(desk, "look juniper 208 open");
        code.Should().Be(5);
        said.Should().NotContain("Kept");
        messages.Should().Contain("is the disk full").And.Contain("Not kept:  drain.weeps: open");
        File.ReadAllText(log).Should().Be(full);
    }

    /// <summary>A link to a folder that is gone can be written by nobody, not even by who may do anything.</summary>
    [Fact]
    public void Where_the_log_cannot_be_opened_the_answer_is_given_back()
    {
        using var desk = new Desk();
        File.CreateSymbolicLink(desk.PathOf("juniper.log.jsonl"), desk.PathOf("gone/juniper.log.jsonl"));
        var ran = desk.Run("look", "juniper", "208", "open");
        ran.Code.Should().Be(5);
        ran.Messages.Should().Contain("Not kept:  drain.weeps: open");
    }

    /// <summary>No file may grow past 1024 bytes; writing on fails as it does on a full disk.</summary>
    private static (int Code, string Results, string Messages) Limited(Desk desk, string words)
    {
        var program = new ProcessStartInfo("bash", ["-c", $"trap '' XFSZ; ulimit -f 1; exec dotnet {typeof(Terminal).Assembly.Location} {words}"])
        {
            WorkingDirectory = desk.Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        program.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        program.Environment["DOTNET_EnableDiagnostics"] = "0";
        using var run = Process.Start(program)!;
        var messages = run.StandardError.ReadToEndAsync();
        var results = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return (run.ExitCode, results, messages.Result);
    }
}
