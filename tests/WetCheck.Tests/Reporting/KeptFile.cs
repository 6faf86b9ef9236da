using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>Output that is kept in the repository, to be read by people. <c>WETCHECK_REGENERATE=1</c> writes it anew.</summary>
internal static class KeptFile
{
    /// <summary>Never where a machine builds: what it would write nobody would read.</summary>
    public static bool IsToBeMade =>
        Environment.GetEnvironmentVariable("WETCHECK_REGENERATE") == "1"
        && Environment.GetEnvironmentVariable("CI") is null or "";

    /// <returns>What is kept, which is <paramref name="made"/> where it is made anew.</returns>
    public static string Of(string file, string made)
    {
        if (IsToBeMade)
        {
            var path = Path.Combine(Repository.Root, file);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, made);
        }

        return Repository.Read(file);
    }
}
