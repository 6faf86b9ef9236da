namespace WetCheck.Fuzz;

/// <summary>Inputs one after the other in this process, each under a watchdog.</summary>
internal static class Batch
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    private static int s_seed;
    private static int s_seen;
    private static TimeSpan s_since;

    /// <summary>
    /// Tells each seed that failed, with why. An input that does not end ends the process: the next batch begins behind
    /// it.
    /// </summary>
    /// <returns>How many failed.</returns>
    public static int Run(int from, int count, TextWriter to)
    {
        _ = Seeds.Job;
        Input.Read(from);
        using var watch = new Timer(_ => Watch(to), null, Longest, Longest / 4);
        var failed = 0;
        for (var seed = from; seed < from + count; seed++)
        {
            Volatile.Write(ref s_seed, seed);
            if (Fault(seed) is { } fault)
            {
                failed++;
                to.WriteLine($"{seed} {fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")} "
                    + $"{fault.StackTrace?.Split('\n').FirstOrDefault()?.Trim()}");
            }
        }

        return failed;
    }

    /// <summary>Null: the reader took it.</summary>
    public static Exception? Fault(int seed)
    {
        try
        {
            Input.Read(seed);
            return null;
        }
        catch (Exception fault)
        {
            return fault;
        }
    }

    /// <summary>Counted in time of the processor from when the seed is first seen here, so that a busy machine stops no input.</summary>
    private static void Watch(TextWriter to)
    {
        var (seed, now) = (Volatile.Read(ref s_seed), Environment.CpuUsage.TotalTime);
        if (seed != s_seen)
        {
            (s_seen, s_since) = (seed, now);
        }
        else if (now - s_since > Longest)
        {
            to.WriteLine($"{seed} did not end in {Longest.TotalSeconds} s");
            to.Flush();
            Environment.Exit(Program.Hangs);
        }
    }
}
