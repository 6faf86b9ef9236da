using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>What old work's look accounts for, for other programs. Schema: <c>docs/schemas/tearout.schema.json</c>.</summary>
public static class TearoutJson
{
    /// <summary>Changes when a key changes its meaning or goes.</summary>
    public const string Format = "wetcheck tearout 1";

    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Of(TearoutReport report, Walk walk, string language, string when)
    {
        var says = new TearoutSays(walk, language);
        return JsonPage.Write(
            new TearoutShape
            {
                Format = Format,
                Language = language,
                When = when,
                Job = walk.Job.Name,
                File = walk.Job.File,
                Gate = [.. says.Gate(report)],
                Expect = [.. report.Expected.Select(one => says.Phrases.Of(one.Say))],
                Seen = Signs(report.Signs, says),
                Causes = [.. report.Causes.Where(cause => cause.Fit != Fit.Unseen).Select(cause => Cause(cause, says))],
                Sets = [.. report.Sets.Select(set => (IReadOnlyList<string>)[.. set.Select(cause => cause.Cause.Number)])],
                Leftover = Signs(report.Leftover, says),
                Tests = [.. report.Tests.Select(test => Test(test, says))],
                Closing = Sentence.Joined(says.Phrases[Phrase.Tearout.Closing], says.Phrases[Phrase.Close.Record]),
            },
            JsonShapes.Default.TearoutShape);
    }

    private static CauseShape Cause(CauseSeen cause, TearoutSays says) => new()
    {
        Number = cause.Cause.Number,
        Cause = cause.Cause.Id,
        Fit = WhyCause.Key(cause.Fit),
        Say = says.Phrases.Of(cause.Cause.Name),
        How = says.Phrases.Of(cause.Cause.How),
        Seen = Signs(cause.Signs, says),
        Missing = [.. cause.Missing.Select(need => Conditions.Say(need, null, says.Telling.Walk.Book, says.Phrases))],
        Against = Signs(cause.Against, says),
        OpenNext = says.Phrases.Of(cause.Cause.Next),
        Guards = [.. cause.Cause.Guards],
        Dangers = [.. cause.Cause.Dangers],
        Sources = [.. says.Sources(cause.Cause.Rows)],
    };

    private static TestShape Test(TestSeen test, TearoutSays says) => new()
    {
        Number = test.Test.Number,
        Do = says.Phrases.Of(test.Test.Do),
        Result = test.Wet switch { Tri.Yes => "wet", Tri.No => "dry", _ => "not-done" },
    };

    private static IReadOnlyList<SignShape> Signs(IReadOnlyList<Sign> signs, TearoutSays says) =>
        [.. signs.Select(sign =>
            new SignShape { Fact = sign.Fact.Id.ToString(), Say = says.Sign(sign),
            Line = sign.Fact.Counted?.At.Line })];
}
