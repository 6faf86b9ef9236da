using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using WetCheck.Benchmarks;

// dotnet run -c Release --project tests/WetCheck.Benchmarks
// Times are of one machine: read the Ratio column.
BenchmarkSwitcher.FromTypes([typeof(OneReading), typeof(ManyLevels)]).RunAll(DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)), args);
