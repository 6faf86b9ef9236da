using WetCheck.Cli.Commands;
using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Cli.Asking;

/// <summary>Finds what is to be asked by what was typed for NUMBER: a number of the list, of one member, of a place where there is none yet, or a line.</summary>
internal static class Named
{
    public static IReadOnlyList<Question> Find(Walk walk, string asked, Phrases phrases)
    {
        if (Numbered.Find(walk, asked) is { } entry)
        {
            var questions = Numbered.MemberOf(entry, asked) is { } index ? Question.OfMember(walk, entry, index) : Question.Behind(walk, entry);
            return questions.Count > 0 ? questions : throw new Halt(
                ExitCode.TypedWrong,
                $"Nothing is asked for {entry.Number}: its result is {phrases["result." + Keys.Of(entry.Result)].ToLowerInvariant()}.");
        }

        return (AtPlace(walk, asked) ?? Question.Of(walk, asked)) is { } question ? [question]
            : throw new Halt(ExitCode.TypedWrong, Numbered.NotFound(walk, asked));
    }

    /// <summary>One answer can't be for several lines: each by its name.</summary>
    public static Halt Several(string asked, IReadOnlyList<Question> questions, string job) => new(
        ExitCode.TypedWrong,
        $"{asked} asks {questions.Count} things. One by one, or each on its line:\n    wetcheck look {job} {asked}"
            + string.Concat(questions.Take(6).Select(question => $"\n    wetcheck look {job} {Quoted(question.Line.Path)} {Quoted(question.Line.Answer("ANSWER"))}")));

    /// <summary>The members of a list at a place where nobody has named one: 221-B.</summary>
    private static Question? AtPlace(Walk walk, string asked)
    {
        var dash = asked.IndexOf('-', StringComparison.Ordinal);
        return dash > 0 && int.TryParse(asked[..dash], out var number) && walk.Book.Rule(number) is { } rule
            && rule.Part is { IsList: true } kind
            && kind.Places.FirstOrDefault(place => string.Equals(place.Letters, asked[(dash + 1)..], StringComparison.OrdinalIgnoreCase)) is { } place
            ? Question.Of(walk, LinePath.OfList(new Part(kind, null, place)).Path)
            : null;
    }

    private static string Quoted(string word) => word.Contains(' ', StringComparison.Ordinal) ? $"\"{word}\"" : word;
}
