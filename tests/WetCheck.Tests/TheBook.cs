using WetCheck.Flow;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;
using WetCheck.Tests.Conventions;
using Entry = WetCheck.Model.Entry;

namespace WetCheck.Tests;

/// <summary>The rule book of the repository, read once.</summary>
internal static class TheBook
{
    private static readonly Lazy<(RuleBook Book, IReadOnlyList<RuleCase> Cases, ReadyBook Ready)> Read = new(() =>
    {
        var files = Repository.In("rules/", "").Select(file => (file["rules/".Length..], Repository.Read(file))).ToList();
        var (book, cases, problems) = RuleBookReader.Read(files);
        problems.Should().BeEmpty();
        return (book!, cases, new ReadyBook(book!));
    });

    public static RuleBook Book => Read.Value.Book;

    public static IReadOnlyList<RuleCase> Cases => Read.Value.Cases;

    public static ReadyBook Ready => Read.Value.Ready;

    /// <summary>The same, as every program opens it.</summary>
    public static Book Open { get; } = new(Ready, "rules", new(() => Cases));

    public static Job Job(string text, string file = "test.job.yaml")
    {
        var (job, problems) = JobReader.Read(file, text, Book.Vocabulary);
        problems.Where(problem => problem.Effect != Effect.Asked).Should().BeEmpty(text);
        return job!;
    }

    public static Job Example(string name) => Job(Repository.Read($"docs/examples/{name}.job.yaml"), $"{name}.job.yaml");

    public static Walk Walk(string text) => Walk(Job(text));

    public static Walk Walk(Job job) => Inspection.Of(job, [], Ready);

    /// <summary>The job with one line put in the place of what it says: <c>curb.height: 5</c>.</summary>
    public static Job With(Job job, string line)
    {
        var (changed, problem) = JobChange.Apply(job, Book.Vocabulary, line);
        problem.Should().BeNull(line);
        return changed!;
    }

    /// <summary><c>correction</c>, <c>correction on paper</c>, ... as cases and plans of faults write it.</summary>
    public static string Said(Entry entry) => entry.Paper == Paper.None
        ? Keys.Of(entry.Result)
        : $"{Keys.Of(entry.Result)} {Keys.Of(entry.Paper).Replace('-', ' ')}";
}
