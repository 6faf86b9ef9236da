using WetCheck.Model;

namespace WetCheck.Geometry;

/// <summary>The codes that may apply: the stated one, else all families that the job's units reach.</summary>
internal static class PossibleCodesOf
{
    public static IReadOnlyDictionary<string, PossibleCodes> All(Job job, Vocabulary vocabulary) =>
        vocabulary.Disciplines.ToDictionary(discipline => discipline.Name, discipline => Of(job, discipline), StringComparer.Ordinal);

    private static PossibleCodes Of(Job job, Discipline discipline) =>
        job.Codes.TryGetValue(discipline.Name, out var stated)
            ? new PossibleCodes(stated, [new CodeRange(stated.Family, stated.Edition, stated.Edition)])
            : new PossibleCodes(null, [.. discipline.Families
                .Where(family => job.Metric is { } metric
                    ? (metric ? family.TriedInMillimetres : family.TriedInInches)
                    : family.TriedInMillimetres || family.TriedInInches)
                .Select(family => new CodeRange(family.Name))]);
}
