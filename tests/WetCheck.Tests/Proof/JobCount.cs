using System.Globalization;

namespace WetCheck.Tests.Proof;

/// <summary>How many jobs are drawn: 200, or as many as WETCHECK_JOBS says.</summary>
internal static class JobCount
{
    public static int Of { get; } = int.Parse(Environment.GetEnvironmentVariable("WETCHECK_JOBS") ?? "200", CultureInfo.InvariantCulture);
}
