using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using WetCheck.Benchmarks;
using WetCheck.Benchmarks.Peers;

// dotnet run -c Release --project tests/WetCheck.Benchmarks -- ratios
// Times are of one machine: read the ratios.
if (args is ["ratios"])
{
    Walks.Print();
    Contest.Print();
    return;
}

BenchmarkSwitcher.FromTypes([typeof(OneReading), typeof(ManyLevels)])
    .RunAll(DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)), args);
