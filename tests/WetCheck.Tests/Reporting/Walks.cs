using WetCheck.Flow;
using WetCheck.Model;
using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting;

/// <summary>Walks that every list is tried on: the examples, the job of each case by its own rule, and one of each
/// chapter by all. Walked once.</summary>
internal static class Walks
{
    public const string When = "Wed Nov 25, 4:05 pm";

    /// <summary>Not those of docs/examples/local: they are held against a book of their own.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Repository.In("docs/examples/", ".job.yaml")
            .Select(file => file["docs/examples/".Length..^".job.yaml".Length])
            .Where(name => !name.Contains('/', StringComparison.Ordinal))];

    private static readonly Lazy<IReadOnlyList<(string Name, Walk Walk)>> s_examples = new(() =>
        [.. Names.Select(name => (name, TheBook.Walk(TheBook.Example(name))))]);

    private static readonly Lazy<IReadOnlyList<(string Name, Walk Walk)>> s_cases = new(() =>
    [
        .. Depth.OneOf(4, TheBook.Cases.DistinctBy(one => one.Job))
            .Select(one =>
            ($"{one.Rule}: {one.Name}",
            Inspection.Of(TheBook.Job(one.Job), [], TheBook.Ready.Alone(TheBook.Book.Rule(one.Rule)!)))),
        .. TheBook.Cases.DistinctBy(one => one.Rule.Split('/')[0]).Select(one => ($"{one.Rule}: {one.Name}, whole", TheBook.Walk(one.Job))),
    ]);

    public static IReadOnlyList<(string Name, Walk Walk)> Examples => s_examples.Value;

    /// <summary>The examples, the jobs of the cases against their own rule, one of each chapter against all rules.</summary>
    public static IReadOnlyList<(string Name, Walk Walk)> All => [.. s_examples.Value, .. s_cases.Value];

    public static Walk Example(string name) => Examples.Single(example => example.Name == name).Walk;
}
