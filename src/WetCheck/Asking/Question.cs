using WetCheck.Intake;
using WetCheck.Model;

namespace WetCheck.Asking;

/// <summary>One fact to ask for, with the line of the job file that it stands on.</summary>
/// <param name="Replaces">The reading that the answer puts out of count; null: it counts beside those before.</param>
/// <param name="IsAgain">It was read, and is read once more.</param>
internal sealed record Question(Look Look, LinePath Line, string? Replaces = null, bool IsAgain = false)
{
    public (string, string, bool) Key => (Line.Path, Line.Before, IsAgain);

    /// <summary>The same is asked of another part of the kind.</summary>
    public bool IsAlike(Question other) => Look.Fact.Reading == other.Look.Fact.Reading
        && Look.Parts is [var part] && other.Look.Parts is [var alike] && part.Kind == alike.Kind && part != alike;

    /// <summary>An answer to it as the log keeps it.</summary>
    public LoggedAnswer Answered(string read, DateTimeOffset at, string? by) =>
        new(new At("answer", 1, 1), Stamp.Of(at), Line.Path, read, by, null, Replaces);

    /// <summary>What is owed, in order; of parts of one kind each by itself. Last what is to be read again.</summary>
    public static IEnumerable<Question> Owed(Walk walk) => OfLooks(walk)
        .Concat(walk.Entries.Where(entry => entry.Result == Result.ReadAgain).SelectMany(entry => Behind(walk, entry))
            .Select(question => question with { IsAgain = true }))
        .DistinctBy(question => question.Key);

    /// <summary>What an entry stands on, where it is settled; what it hangs on, where it is open.</summary>
    public static IReadOnlyList<Question> Behind(Walk walk, Entry entry)
    {
        var isSettled = entry.Result is Result.Correction or Result.Ok || entry is { Result: Result.Later, Paper: Paper.Good };
        var facts = isSettled
            ? entry.Same.SelectMany(check => check.Sides).SelectMany(side => side.Tests)
                .Where(test => entry.Result != Result.Correction || test.Answer != Tri.Yes)
                    .SelectMany(test => Typed(test.Fact)).Select(fact => fact.Id)
            : entry.Same.SelectMany(check => check.Judgement.Hangs)
                .SelectMany(hang => hang.Fact is { } fact ? Typed(fact).Select(one => one.Id) : [hang.Id]);
        return [.. facts.Distinct().SelectMany(fact => Of(walk, fact, entry.Number))
            .Select(question => isSettled ? Anew(walk, question, entry) : question)
            .DistinctBy(question => question.Key)];
    }

    /// <summary>One member of an entry alone: the second nail of 221-A.</summary>
    public static IReadOnlyList<Question> OfMember(Walk walk, Entry entry, int index) =>
        [.. Behind(walk, entry with { Checks = [.. entry.Checks.Where(check => check.Part.Index == index)] })
            .Select(question => question.Look.Parts is [{ Index: { } } part] && question.Line.IsList
                ? question with { Line = new LinePath($"{question.Line.Path} {part.Index}") }
                : question)];

    /// <summary>A line by its name. What is read there already no longer counts, unless it is to be read again; a list grows.</summary>
    public static Question? Of(Walk walk, string path)
    {
        if (LinePath.Typed(walk.Book.Vocabulary, path) is not { } line)
        {
            return null;
        }

        var on = walk.Job.Parts.SelectMany(part =>
            part.Readings.Keys.Select(reading => new FactId(part.Part.Id, reading))
            .Append(new FactId(part.Part.Id, FactId.Presence)))
            .Where(fact => LinePath.Of(walk.Book.Vocabulary, fact, PartOf(walk, fact))?.Path == line.Path).ToList();
        var again = walk.Entries.Where(entry => entry.Result == Result.ReadAgain).SelectMany(entry => entry.Same)
            .SelectMany(check => check.Judgement.Hangs).Where(hang => hang.Near).SelectMany(hang => Typed(hang.Fact))
                .Select(fact => fact.Id).ToHashSet();
        return new Question(
            new Look("", on.Count > 0 ? on[0] : new FactId(line.Path, ""), [], null, Paper.None, [], [], At.Nowhere),
            line,
            line.IsList || on.Any(again.Contains) ? null : on.Select(fact => Before(walk, fact)).OfType<string>().LastOrDefault());
    }

    private static IEnumerable<Question> OfLooks(Walk walk) => walk.Looks.SelectMany(look => look.Parts.Count == 0
        ? Of(walk, look.Fact, look.Number)
        : look.Parts.SelectMany(part =>
            Of(walk, new FactId(part.Id, look.Fact.Reading), NumberOf(look, new FactId(part.Id, look.Fact.Reading)))));

    /// <summary>Of one part alone: the first check that hangs on it.</summary>
    private static string NumberOf(Look look, FactId fact) => look.Settles.Concat(look.Bears)
        .Where(entry => entry.Checks.Any(check => check.Judgement.Hangs.Any(hang => hang.Id == fact)))
        .OrderBy(entry => entry.Rule.Severity).ThenBy(entry => entry.Rule.Number)
        .FirstOrDefault()?.Number ?? look.Number;

    private static IEnumerable<Question> Of(Walk walk, FactId fact, string number)
    {
        var part = PartOf(walk, fact);
        var isOfJob = part?.Kind.Find(fact.Reading) is null && fact.Reading is not (FactId.Presence or FactId.Whole);
        if (LinePath.Of(walk.Book.Vocabulary, fact, part) is { } line)
        {
            IReadOnlyList<Part> parts = part is null || isOfJob ? [] : [part];
            yield return new Question(new Look(number, fact, parts, part?.Kind.Find(fact.Reading), Paper.None, [], [], At.Nowhere), line);
        }
    }

    /// <summary>
    /// A new answer where there is one. A list with a fault is written anew, as what was pulled is no longer there; to
    /// one without a fault more
    /// is added.
    /// </summary>
    private static Question Anew(Walk walk, Question question, Entry entry) => question.Look.Parts is [{ Index: { } } member]
        ? question with
        {
            Line = LinePath.OfList(member),
            Replaces = entry.Result == Result.Correction ? Before(walk, question.Look.Fact) : null,
        }
        : question with { Replaces = Before(walk, question.Look.Fact) };

    /// <summary>A fact that is worked out from others can't be answered; those can.</summary>
    private static IEnumerable<Fact> Typed(Fact? fact) => fact is null ? [] : fact.Kind.Derived ? fact.From.SelectMany(Typed) : [fact];

    private static Part? PartOf(Walk walk, FactId fact) => walk.Job.Parts.FirstOrDefault(part => part.Part.Id == fact.Part)?.Part;

    /// <summary>
    /// The reading that counts now: its time, or its place in the job file. Of one with none, where the job speaks of
    /// its part.
    /// </summary>
    private static string? Before(Walk walk, FactId fact)
    {
        var part = walk.Job.Parts.First(part => part.Part.Id == fact.Part);
        return fact.Reading == FactId.Presence ? part.Said != Tri.Unknown && part.Readings.Count == 0 ? part.At.ToString() : null
            : part.Of(fact.Reading).LastOrDefault(reading => !reading.Planned) is { } reading
            ? reading.At.File == walk.Job.File ? reading.At.ToString() : reading.Date
            : null;
    }
}
