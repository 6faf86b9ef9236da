using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Intake;

/// <summary>The files of the repository's rule book, as the reader takes them.</summary>
internal static class BookText
{
    public static IReadOnlyList<(string Path, string Text)> Files { get; } =
        [.. Repository.Files.Where(file => file.StartsWith("rules/", StringComparison.Ordinal))
            .Select(file => (file["rules/".Length..], Repository.Read(file)))];

    /// <summary>Vocabulary, methods and sources, no rules.</summary>
    public static IReadOnlyList<(string Path, string Text)> WithoutRules { get; } =
        [.. Files.Where(file => file.Path.StartsWith("vocabulary/", StringComparison.Ordinal)
            || file.Path.StartsWith("methods/", StringComparison.Ordinal)
            || (!file.Path.Contains('/') && file.Path != "opening.yaml"))];

    public static Vocabulary Vocabulary { get; } = Read();

    public static IReadOnlyList<Problem> ProblemsOf(string job) => JobReader.Read("test.job.yaml", job, Vocabulary).Problems;

    /// <summary>A job that reads without a word.</summary>
    public static Job Job(string text)
    {
        var (job, problems) = JobReader.Read("test.job.yaml", text, Vocabulary);
        problems.Select(problem => $"{problem.At} {problem.Say}").Should().BeEmpty(text);
        return job!;
    }

    /// <summary>The vocabulary with these files for rules.</summary>
    public static (RuleBook? Book, IReadOnlyList<RuleCase> Cases,
        IReadOnlyList<Problem> Problems) With(IReadOnlyList<(string Path, string Text)> files) =>
        RuleBookReader.Read([.. WithoutRules.Where(old => !files.Any(file => file.Path == old.Path)), .. files]);

    private static Vocabulary Read()
    {
        var (vocabulary, problems) = RuleBookReader.ReadVocabulary(Files);
        problems.Select(problem => $"{problem.At} {problem.Say}").Should().BeEmpty();
        return vocabulary;
    }
}
