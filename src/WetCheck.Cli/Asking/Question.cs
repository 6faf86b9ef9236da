using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Cli.Asking;

/// <summary>One fact to ask for, with the line of the job file that it stands on.</summary>
/// <param name="Replaces">The reading that the answer puts out of count; null: it counts beside those before.</param>
internal sealed record Question(Look Look, LinePath Line, string? Replaces)
{
    /// <summary>What is owed, in order; of parts of one kind each by itself.</summary>
    public static IEnumerable<Question> Owed(Walk walk) => walk.Looks.SelectMany(look => look.Parts.Count == 0
        ? Of(walk, look.Fact, look.Number, null)
        : look.Parts.SelectMany(part => Of(walk, new FactId(part.Id, look.Fact.Reading), look.Number, null)))
        .Where(question => question.Look.Parts is not [{ Index: not null }])
        .DistinctBy(question => (question.Line.Path, question.Line.Before));

    /// <summary>What an entry stands on, where it is settled; what it hangs on, where it is open.</summary>
    public static IReadOnlyList<Question> Behind(Walk walk, Entry entry)
    {
        var isSettled = entry.Result is Result.Correction or Result.Ok || entry is { Result: Result.Later, Paper: Paper.Good };
        var facts = isSettled
            ? entry.Same.SelectMany(check => check.Sides).SelectMany(side => side.Tests)
                .Where(test => entry.Result != Result.Correction || test.Answer != Tri.Yes).SelectMany(test => Typed(test.Fact)).Select(fact => fact.Id)
            : entry.Same.SelectMany(check => check.Judgement.Hangs).SelectMany(hang => hang.Fact is { } fact ? Typed(fact).Select(one => one.Id) : [hang.Id]);
        return [.. facts.Distinct().SelectMany(fact => Of(walk, fact, entry.Number, isSettled ? Before(walk, fact) : null))
            .DistinctBy(question => (question.Line.Path, question.Line.Before))];
    }

    private static IEnumerable<Question> Of(Walk walk, FactId fact, string number, string? replaces)
    {
        var part = walk.Job.Parts.FirstOrDefault(part => part.Part.Id == fact.Part)?.Part;
        var isOfJob = part?.Kind.Find(fact.Reading) is null && fact.Reading is not (FactId.Presence or FactId.Whole);
        if (LinePath.Of(walk.Book.Vocabulary, fact, part) is { } line)
        {
            IReadOnlyList<Part> parts = part is null || isOfJob ? [] : [part];
            yield return new Question(new Look(number, fact, parts, part?.Kind.Find(fact.Reading), Paper.None, [], [], At.Nowhere), line, replaces);
        }
    }

    /// <summary>A fact that is worked out from others can't be answered; those can.</summary>
    private static IEnumerable<Fact> Typed(Fact? fact) => fact is null ? [] : fact.Kind.Derived ? fact.From.SelectMany(Typed) : [fact];

    /// <summary>The reading that counts now: its time, or its place in the job file.</summary>
    private static string? Before(Walk walk, FactId fact) =>
        walk.Job.Parts.First(part => part.Part.Id == fact.Part).Of(fact.Reading).LastOrDefault(reading => !reading.Planned) is { } reading
            ? reading.At.File == walk.Job.File ? reading.At.ToString() : reading.Date
            : null;
}
