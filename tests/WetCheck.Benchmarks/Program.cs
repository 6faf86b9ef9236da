using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using WetCheck.Benchmarks;

// dotnet run -c Release --project tests/WetCheck.Benchmarks
// Times are of one machine: read the Ratio column.
BenchmarkRunner.Run<OneReading>(DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)));
