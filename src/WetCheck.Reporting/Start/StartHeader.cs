using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The lines at the top of a starting file.</summary>
internal static class StartHeader
{
    /// <summary>What is to be known before the first line, without the marks of a comment.</summary>
    public static IReadOnlyList<string> Comments(Job job, Phrases phrases)
    {
        var method = job.Method is { } known ? phrases.Of(known.Say) : phrases[Phrase.Head.NoMethod];
        return
        [
            phrases.Say(Phrase.Start.Fill, ("method", method.ToUpper(CultureInfo.InvariantCulture))),
            phrases[job.Metric == true ? Phrase.Start.WordsMetric : Phrase.Start.Words],
            phrases[Phrase.Start.Sides],
            phrases[Phrase.Start.Heights],
        ];
    }

    public static IReadOnlyList<StartLine> Lines(Job job, Vocabulary vocabulary, Phrases phrases)
    {
        var metric = job.Metric == true;
        return
        [
            new("job", "", [], job.Name.Length == 0 ? "" : Scalar(job.Name)),
            job.Method is { } method ? new("method", "", [], method.Name)
                : new("method", phrases[Phrase.Start.Methods], [.. vocabulary.Methods.Select(one => one.Name)]),
            new("units", "", [phrases[metric ? Phrase.Start.OrInches : Phrase.Start.OrMillimetres]], metric ? "millimetres" : "inches"),
            new("stage", phrases[Phrase.Start.Stops], StopsOf(job, vocabulary), job.Stage ?? ""),
            .. vocabulary.Disciplines.Select(discipline => new StartLine(
                discipline.Say.En,
                phrases[Phrase.Start.Code],
                [.. discipline.Families.Where(family => metric ? family.TriedInMillimetres : family.TriedInInches)
                    .Select(family => family.Name)],
                job.Codes.TryGetValue(discipline.Name, out var code) ? code.Typed : "")
            { Said = phrases.Language == Languages.English ? "" : phrases.Of(discipline.Say) }),
            new("readings by", phrases[Phrase.Start.By], ["JM, tape, 2026-11-25"]),
        ];
    }

    private static List<string> StopsOf(Job job, Vocabulary vocabulary) =>
        [.. (job.Method is { } own ? [own] : vocabulary.Methods).SelectMany(method => method.Stops).Select(stop => stop.Name).Distinct()];

    /// <summary>A name may hold what a file would take for its own marks.</summary>
    private static string Scalar(string name) =>
        char.IsLetterOrDigit(name[0]) && name.All(c => char.IsLetterOrDigit(c) || c is ' ' or ',' or '.' or '-' or '_')
        ? name
        : $"\"{name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
