using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>A walk for other programs. Its published schema is <c>docs/schemas/walk.schema.json</c>.</summary>
public static class JsonList
{
    /// <summary>Changes when a key changes its meaning or goes.</summary>
    public const string Format = "wetcheck walk 1";

    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Of(Walk walk, string language, string when)
    {
        var telling = new Telling(walk, new Phrases(walk.Book, language));
        var list = Listing.Of(walk, language, when);
        return JsonPage.Write(
            new WalkShape
            {
                Format = Format,
                Language = language,
                When = when,
                Job = walk.Job.Name,
                File = walk.Job.File,
                Method = walk.Job.Method?.Name,
                Stage = walk.Job.Stage,
                Rulebook = JsonPage.Book(walk.Book),
                Codes = [.. list.Heading.Codes],
                Verdict = Keys.Of(walk.Verdict),
                Findings = [.. walk.Entries.Select(entry => JsonFinding.Shape(entry, telling))],
                Looks = [.. list.Looks.Select(JsonLook.Shape)],
                Cautions = Said(walk.Cautions, list.Cautions),
                Notes = Said(walk.Notes, list.Notes),
                Counts = Counts(list.Tally),
                Problems = [.. walk.Problems.Select(Problem)],
                Closing = list.Closing,
            },
            JsonShapes.Default.WalkShape);
    }

    private static IReadOnlyList<SaidShape> Said(IReadOnlyList<Check> checks, IReadOnlyList<Line> lines) =>
        [.. checks.Select((check, i) =>
            new SaidShape { Number = lines[i].Number, Rule = check.Rule.Id, Say = lines[i].Text,
            More = lines[i].More })];

    private static CountsShape Counts(Tally tally) => new()
    {
        Correction = tally.Corrections,
        OnPaper = tally.OnPaper,
        ToCheck = tally.ToCheck,
        ReadAgain = tally.ReadAgain,
        Hidden = tally.HiddenNow,
        Later = tally.Later,
        Ok = tally.Ok,
        NotHere = tally.NotHere,
    };

    private static ProblemShape Problem(Problem problem) => new()
    {
        Code = problem.Code,
        At = problem.At.ToString(),
        Say = problem.Say,
        Typed = problem.Typed,
        Effect = problem.Effect switch { Effect.Asked => "asked", Effect.Blank => "blank", _ => "stops" },
    };
}
