namespace WetCheck.Fuzz;

/// <summary>Inputs one after the other in this process, each under a watchdog.</summary>
internal static class Batch
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    private static int s_seed;
    private static long s_since;

    /// <summary>
    /// Tells each seed that failed, with why. An input that does not end ends the process: the next batch begins behind
    /// it.
    /// </summary>
    /// <returns>How many failed.</returns>
    public static int Run(int from, int count, TextWriter to)
    {
        _ = Seeds.Job;
        Input.Read(from);
        Begin(from);
        using var watch = new Timer(_ => Watch(to), null, Longest, Longest / 4);
        var failed = 0;
        for (var seed = from; seed < from + count; seed++)
        {
            Begin(seed);
            if (Fault(seed) is { } fault)
            {
                failed++;
                to.WriteLine($"{seed} {fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")} {fault.StackTrace?.Split('\n').FirstOrDefault()?.Trim()}");
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

    private static void Begin(int seed)
    {
        Volatile.Write(ref s_seed, seed);
        Volatile.Write(ref s_since, Environment.TickCount64);
    }

    private static void Watch(TextWriter to)
    {
        if (Environment.TickCount64 - Volatile.Read(ref s_since) > Longest.TotalMilliseconds)
        {
            to.WriteLine($"{Volatile.Read(ref s_seed)} did not end in {Longest.TotalSeconds} s");
            to.Flush();
            Environment.Exit(Program.Hangs);
        }
    }
}
