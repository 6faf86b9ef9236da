using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>The head of every list.</summary>
/// <param name="Method">"liner shower".</param>
/// <param name="Stage">"before the flood test".</param>
/// <param name="Codes">One for each discipline that a rule on this job asks, or the job states: "plumbing code IRC 2021".</param>
/// <param name="Warnings">Local changes, stated codes that the book has nothing for, rules that lack the language.</param>
/// <param name="Book">"Rule book: inch and metric, 2026-11".</param>
/// <param name="When">As it came in.</param>
public sealed record Heading(string Job, string Method, string Stage, IReadOnlyList<string> Codes,
    IReadOnlyList<string> Warnings, string Book, string When)
{
    /// <summary>The family that stands for no code at all.</summary>
    private const string None = "none";

    internal static Heading Of(Telling telling, string when)
    {
        var (job, phrases) = (telling.Job, telling.Phrases);
        var stop = (job.Method is { } told ? [told] : telling.Walk.Book.Vocabulary.Methods)
            .SelectMany(method => method.Stops).FirstOrDefault(s => s.Name == job.Stage);
        return new Heading(
            Cut.Name(job.Name),
            job.Method is { } named ? phrases.Of(named.Say) : phrases[Phrase.Head.NoMethod],
            stop is not null ? phrases.Of(stop.Say) : phrases[Phrase.Head.NoStage],
            [.. CodesOf(telling)],
            [.. Local(telling), .. NotInBook(telling), .. OnlyEnglish(telling)],
            phrases.Say(Phrase.Head.Book, ("name", telling.Walk.Book.Name), ("date", telling.Walk.Book.Date)),
            when);
    }

    private static IEnumerable<string> CodesOf(Telling telling)
    {
        var asked = telling.Walk.Checks
            .Where(check => check.Result != Result.NotHere)
            .Select(check => check.Rule)
            .Distinct()
            .SelectMany(rule => rule.Conditions().OfType<Condition.CodeIs>())
            .Select(code => code.Discipline)
            .ToHashSet();
        foreach (var discipline in telling.Walk.Book.Vocabulary.Disciplines)
        {
            var name = telling.Phrases.Of(discipline.Say);
            if (telling.Job.Codes.TryGetValue(discipline.Name, out var stated))
            {
                yield return telling.Phrases.Say(stated.Family == None ? Phrase.Head.NoCode : Phrase.Head.Code,
                    ("discipline", name), ("code", Naming.Code(stated)));
            }
            else if (asked.Contains(discipline.Name))
            {
                var tried = discipline.Families.Where(family => telling.Job.Metric switch
                {
                    true => family.TriedInMillimetres,
                    false => family.TriedInInches,
                    _ => family.TriedInInches || family.TriedInMillimetres,
                }).Select(family => family.Name).Where(family => family != None);
                yield return telling.Phrases.Say(Phrase.Head.Tried, ("discipline", name), ("codes", string.Join(", ", tried)));
            }
        }
    }

    private static IEnumerable<string> Local(Telling telling) => telling.Walk.Book.Local.Select(local => telling.Phrases.Say(
        Phrase.Head.Local,
        ("count", local.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)),
        ("name", Sentence.Joined(local.Name, local.Date)),
        ("file", local.File)));

    private static IEnumerable<string> NotInBook(Telling telling) => telling.Walk.Book.Vocabulary.Disciplines
        .Where(discipline => telling.Job.Codes.TryGetValue(discipline.Name, out var code) && !code.InBook)
        .Select(discipline => telling.Phrases.Say(
            Phrase.Head.NotInBook,
            ("discipline", Sentence.Capital(telling.Phrases.Of(discipline.Say))),
            ("code", Naming.Code(telling.Job.Codes[discipline.Name]))));

    /// <summary>A rule whose words the language lacks is told in English, and that is said.</summary>
    private static IEnumerable<string> OnlyEnglish(Telling telling)
    {
        var lacking =
            telling.Walk.Entries.Where(entry => entry.Result is not (Result.NotHere or Result.Ok or Result.Later))
            .Select(entry => entry.Rule)
            .Concat(telling.Walk.Cautions.Concat(telling.Walk.Notes).Select(check => check.Rule))
            .Where(rule => !rule.Texts.ContainsKey(telling.Phrases.Language))
            .Select(Naming.Digits).Distinct().ToList();
        if (lacking.Count > 0)
        {
            yield return telling.Phrases.Say(Phrase.Head.OnlyEnglish, ("numbers", Numbers.Few(lacking, telling.Phrases)));
        }
    }
}
