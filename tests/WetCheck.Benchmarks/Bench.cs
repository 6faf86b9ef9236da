using System.Globalization;
using WetCheck.Intake;
using WetCheck.Model;
using Path = System.IO.Path;

namespace WetCheck.Benchmarks;

/// <summary>The rule book and the job juniper of this folder tree, and the same job with more nails.</summary>
internal static class Bench
{
    private static readonly string s_top = Top();

    public static ReadyBook Book()
    {
        var rules = Path.Combine(s_top, "rules");
        var (book, _, problems) = RuleBookReader.Read(
            [.. Directory.EnumerateFiles(rules, "*", SearchOption.AllDirectories).Select(file => (Path.GetRelativePath(rules, file), File.ReadAllText(file)))]);
        return new ReadyBook(book ?? throw new InvalidOperationException(string.Join('\n', problems.Select(problem => $"{problem.At}: {problem.Say}"))));
    }

    /// <param name="moreNails">Each at a height of its own on the back wall.</param>
    /// <param name="liner">How high the liner stands on the right wall.</param>
    public static Job Juniper(int moreNails, string liner, Vocabulary vocabulary)
    {
        var nails = string.Join(", ", Enumerable.Range(1, moreNails).Select(i => string.Create(CultureInfo.InvariantCulture, $"{i % 9}-{(2 * (i % 8)) + 1}/16 above")));
        var text = File.ReadAllText(Path.Combine(s_top, "docs", "examples", "juniper.job.yaml"))
            .Replace("right: 2-1/2", "right: " + liner, StringComparison.Ordinal)
            .Replace("  seen: some\n", moreNails == 0 ? "  seen: some\n" : $"  seen: some\n  back: {nails}\n", StringComparison.Ordinal);
        return JobReader.Read("juniper.job.yaml", text, vocabulary).Job ?? throw new InvalidOperationException("juniper can't be read");
    }

    /// <summary>A job with the readings of one part taken from another job; all other parts are the same objects.</summary>
    public static Job WithOneReading(Job job, Job other, string part) => job with
    {
        Parts = [.. job.Parts.Select(was => was.Part.Id == part ? was with { Readings = other.Parts.Single(now => now.Part.Id == part).Readings } : was)],
    };

    private static string Top()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "WetCheck.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("WetCheck.sln is in none of the folders above.");
        }

        return folder.FullName;
    }
}
