using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Tests.Conventions;

/// <summary>What the documents show can be typed as it stands.</summary>
public sealed class DocumentedYaml
{
    private static readonly IReadOnlyList<(string Path, string Text)> Book =
        [.. Repository.Files.Where(file => file.StartsWith("rules/", StringComparison.Ordinal))
            .Select(file => (file["rules/".Length..], Repository.Read(file)))];

    private static readonly Vocabulary Vocabulary = RuleBookReader.ReadVocabulary(Book).Vocabulary;

    [Fact]
    public void Every_piece_says_what_it_is() =>
        Fence.All.Where(fence => fence.Sort is not ("job" or "rule" or "cases" or "sources" or "local")).Should().BeEmpty();

    [Fact]
    public void Every_job_is_read_without_a_question() =>
        Fence.All.Where(fence => fence.Sort == "job")
            .SelectMany(fence => JobReader.Read(fence.ToString(), fence.Text, Vocabulary)
                .Problems.Select(problem => $"{problem.At}: {problem.Say}"))
            .Should().BeEmpty();

    [Fact]
    public void Every_local_change_is_taken() =>
        Fence.All.Where(fence => fence.Sort == "local")
            .SelectMany(fence => LocalBook.Of(TheBook.Book, "a.job.yaml", "local: b.yaml", _ => fence.Text)
                .Problems.Select(problem => $"{fence}: {problem.Say}"))
            .Should().BeEmpty();

    [Fact]
    public void Every_example_is_read_without_a_question() =>
        Repository.In("docs/examples/", ".job.yaml")
            .SelectMany(file => JobReader.Read(file, Repository.Read(file), Vocabulary)
                .Problems.Select(problem => $"{problem.At}: {problem.Say}"))
            .Should().BeEmpty();
}
