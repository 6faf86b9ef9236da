using System.Globalization;
using System.Text.RegularExpressions;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Asking;

/// <summary>
/// Finds what is to be asked by what was typed for NUMBER: a number of the list, of one member, of a place where there
/// is none yet, or a line.
/// </summary>
internal static partial class Named
{
    public static IReadOnlyList<Question> Find(Walk walk, string asked, Phrases phrases)
    {
        if (Numbered.Find(walk, asked) is { } entry)
        {
            var questions =
                Numbered.MemberOf(entry, asked) is { } index ? Question.OfMember(walk, entry, index)
                : Question.Behind(walk, entry);
            return questions.Count > 0 ? questions : throw new RefusedException(
                RefusedAs.TypedWrong,
                $"Nothing is asked for {entry.Number}: its result is {phrases["result." + Keys.Of(entry.Result)].ToLowerInvariant()}.");
        }

        return (AtPlace(walk, asked) ?? Question.Of(walk, asked)) is { } question ? [question]
            : throw new RefusedException(RefusedAs.TypedWrong, Numbered.NotFound(walk, asked));
    }

    /// <summary>One answer can't be for several lines: each by its name.</summary>
    public static RefusedException Several(string asked, IReadOnlyList<Question> questions, string job) => new(
        RefusedAs.TypedWrong,
        $"{asked} asks {questions.Count} things. One by one, or each on its line:\n    wetcheck look {job} {asked}"
            + string.Concat(questions.Take(6)
                .Select(question =>
                $"\n    wetcheck look {job} {Quoted(question.Line.Path)} {Quoted(question.Line.Answer("ANSWER"))}")));

    /// <summary>The members of a list at a place where nobody has named one: 221-B.</summary>
    private static Question? AtPlace(Walk walk, string asked)
    {
        var dash = asked.IndexOf('-', StringComparison.Ordinal);
        return dash > 0 && int.TryParse(asked[..dash], out var number) && walk.Book.Rule(number) is { } rule
            && rule.Part is { IsList: true } kind
            && kind.Places.FirstOrDefault(place =>
                string.Equals(place.Letters, asked[(dash + 1)..], StringComparison.OrdinalIgnoreCase)) is { } place
            ? Question.Of(walk, LinePath.OfList(new Part(kind, null, place)).Path)
            : null;
    }

    /// <summary>A rule by its name or its number.</summary>
    public static Rule Rule(RuleBook book, string asked) =>
        (int.TryParse(asked, CultureInfo.InvariantCulture, out var number) ? book.Rule(number) : book.Rule(asked))
            ?? throw new RefusedException(RefusedAs.TypedWrong, $"The book has no rule \"{asked}\"."
                + Near(asked, book.Rules.SelectMany(rule => new[] { rule.Id, rule.Number.ToString(CultureInfo.InvariantCulture) }))
                + "\n    wetcheck rules             lists them all."
                + "\n    wetcheck why JOB NUMBER    explains a line of a list.");

    /// <summary>The number of a rule that is new.</summary>
    public static int NewRule(RuleBook book, string asked)
    {
        if (!NewId().IsMatch(asked))
        {
            throw new RefusedException(RefusedAs.TypedWrong,
                "A rule is named by its chapter and its name, in small letters:\n    wetcheck rules new local/curb-width");
        }

        var chapter = asked.Split('/')[0];
        var chapters = book.Rules.Select(rule => rule.Chapter).Append("local").Distinct().Order(StringComparer.Ordinal).ToList();
        return RuleStart.NextNumber(book, chapter) ?? throw new RefusedException(
            RefusedAs.TypedWrong,
                $"The book has no chapter \"{chapter}\".{Near(chapter, chapters)}\n    Its chapters: {string.Join(", ", chapters)}");
    }

    public static RefusedException NoCode(string typed, IEnumerable<string> families) => new(
        RefusedAs.TypedWrong, $"The book has no code \"{typed}\".{Near(typed, families)}\n    wetcheck rules code   lists its codes.");

    public static RefusedException NoCases(string asked, RuleBook book) => new(
        RefusedAs.TypedWrong,
            $"The book has no cases of {asked}.{Near(asked, book.Rules.SelectMany(rule => new[] { rule.Id, rule.Chapter }).Distinct())}"
            + "\n    wetcheck rules   lists its rules.");

    private static string Near(string asked, IEnumerable<string> known) => Nearest.Of(asked, known) is { } near ? $" Nearest: {near}." : "";

    private static string Quoted(string word) => word.Contains(' ', StringComparison.Ordinal) ? $"\"{word}\"" : word;

    [GeneratedRegex("^[a-z][a-z0-9-]*/[a-z][a-z0-9-]*$")]
    private static partial Regex NewId();
}
