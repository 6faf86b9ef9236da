using System.Globalization;
using WetCheck.Flow;
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
            [.. Directory.EnumerateFiles(rules, "*", SearchOption.AllDirectories)
                .Select(file => (Path.GetRelativePath(rules, file), File.ReadAllText(file)))]);
        return new ReadyBook(book
            ?? throw new InvalidOperationException(string.Join('\n',
            problems.Select(problem => $"{problem.At}: {problem.Say}"))));
    }

    /// <param name="nails">On the back wall, each at a height of its own, in place of the job's own nails; none: the job as it is.</param>
    public static Job Juniper(int nails, Vocabulary vocabulary)
    {
        var text = File.ReadAllText(Path.Combine(s_top, "docs", "examples", "juniper.job.yaml"));
        if (nails > 0)
        {
            var heights =
                Enumerable.Range(1, nails)
                .Select(i =>
                string.Create(CultureInfo.InvariantCulture, $"{1 + (i % 9)}-{(2 * (i % 8)) + 1}/16 above"));
            text = text.Replace("  left: 3 above, 3-1/8 above\n",
                $"  left: 3 above, 3-1/8 above\n  back: {string.Join(", ", heights)}\n", StringComparison.Ordinal);
        }

        var (job, problems) = JobReader.Read("juniper.job.yaml", text, vocabulary);
        return problems.Any(problem => problem.Effect != Effect.Asked) || job is null
            ? throw new InvalidOperationException(string.Join('\n', problems.Select(problem => problem.Say)))
            : job;
    }

    public static Job With(Job job, string line, Vocabulary vocabulary) =>
        JobChange.Apply(job, vocabulary, line).Job ?? throw new InvalidOperationException(line);

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
