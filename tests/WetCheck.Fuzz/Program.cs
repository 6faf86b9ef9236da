using System.Diagnostics;
using System.Globalization;

namespace WetCheck.Fuzz;

/// <summary>
/// <c>--count N</c>: so many inputs, in batches, each batch a process with 300 MB of heap. <c>--from S</c>: the first seed.
/// <c>--seed S</c>: one input again, with its trace. Seeds that failed are kept in <c>fuzz-failed.txt</c>.
/// </summary>
internal static class Program
{
    /// <summary>How a batch ends whose input did not.</summary>
    public const int Hangs = 3;

    private const int BatchSize = 20_000;
    private const string HeapLimit = "0x12C00000";
    private const string Kept = "fuzz-failed.txt";

    public static int Main(string[] args)
    {
        if (Number(args, "--seed") is { } one)
        {
            var fault = Batch.Fault(one);
            Console.WriteLine(fault?.ToString() ?? $"{one} is taken.");
            return fault is null ? 0 : 1;
        }

        var (from, count) = (Number(args, "--from") ?? 1, Number(args, "--count") ?? 1_000_000);
        return args.Contains("--batch") ? Batch.Run(from, count, Console.Out) == 0 ? 0 : 1 : All(from, count);
    }

    private static int All(int from, int count)
    {
        var failed = new List<string>();
        for (var seed = from; seed < from + count;)
        {
            var (next, lines) = Child(seed, Math.Min(BatchSize, from + count - seed));
            failed.AddRange(lines);
            lines.ForEach(Console.WriteLine);
            Console.WriteLine($"{seed} to {next - 1}: {lines.Count} failed.");
            seed = next;
        }

        if (failed.Count > 0)
        {
            File.AppendAllLines(Kept, failed);
        }

        Console.WriteLine($"{count} inputs from seed {from}: {failed.Count} failed{(failed.Count > 0 ? $", kept in {Kept}" : "")}.");
        return failed.Count == 0 ? 0 : 1;
    }

    /// <summary>
    /// Where the next batch begins, and what failed in this one. One that ended before its end goes on behind what
    /// ended it.
    /// </summary>
    private static (int Next, List<string> Failed) Child(int from, int count)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!,
            [.. Host(), "--batch", "--from", Text(from), "--count", Text(count)])
        { RedirectStandardOutput = true };
        start.Environment["DOTNET_GCHeapHardLimit"] = HeapLimit;
        using var run = Process.Start(start)!;
        var lines = run.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).ToList();
        run.WaitForExit();
        if (run.ExitCode is 0 or 1 && lines.TrueForAll(line => char.IsDigit(line[0])))
        {
            return (from + count, lines);
        }

        if (run.ExitCode == Hangs && lines.Count > 0)
        {
            return (int.Parse(lines[^1].Split(' ')[0], CultureInfo.InvariantCulture) + 1, lines);
        }

        lines.Add($"{from} to {from + count - 1}: the batch ended with {run.ExitCode}, as it does past its heap.");
        return (from + count, lines);
    }

    /// <summary>Run by <c>dotnet</c>, the program itself is its first word.</summary>
    private static string[] Host() =>
        Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet" ? [typeof(Program).Assembly.Location]
        : [];

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static int? Number(string[] args, string name) =>
        Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length
            && int.TryParse(args[at + 1], CultureInfo.InvariantCulture, out var number) ? number : null;
}
