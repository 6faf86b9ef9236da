using System.Diagnostics;

namespace WetCheck.Benchmarks;

/// <summary>
/// Times contenders in turn, round by round, by the processor time of this program, collector and all: what else the machine
/// does falls on all alike.
/// </summary>
internal static class Rounds
{
    private static readonly TimeSpan s_warm = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan s_least = TimeSpan.FromMilliseconds(40);

    /// <param name="count">How many rounds.</param>
    /// <returns>Of each contender the seconds of one run, in each round.</returns>
    public static IReadOnlyList<double[]> Time(int count, params IReadOnlyList<Action> contenders)
    {
        var runs = contenders.Select(Warm).ToList();
        var seconds = contenders.Select(_ => new double[count]).ToList();
        for (var round = 0; round < count; round++)
        {
            for (var at = 0; at < contenders.Count; at++)
            {
                GC.Collect();
                var from = Environment.CpuUsage.TotalTime;
                for (var run = 0; run < runs[at]; run++)
                {
                    contenders[at]();
                }

                seconds[at][round] = (Environment.CpuUsage.TotalTime - from).TotalSeconds / runs[at];
            }
        }

        return seconds;
    }

    /// <summary>The middle one of the ratios of each round.</summary>
    public static double Ratio(double[] of, double[] to) => Middle(of.Zip(to, (a, b) => a / b));

    public static double Middle(IEnumerable<double> of)
    {
        var inOrder = of.Order().ToList();
        return inOrder[inOrder.Count / 2];
    }

    /// <returns>How many runs make a time that can be read.</returns>
    private static int Warm(Action contender)
    {
        var (watch, runs) = (Stopwatch.StartNew(), 0);
        while (runs < 2 || watch.Elapsed < s_warm)
        {
            contender();
            runs++;
        }

        return Math.Max(1, (int)(s_least / (watch.Elapsed / runs)));
    }
}
