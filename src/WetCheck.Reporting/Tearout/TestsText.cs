using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>Tests with water that open nothing, in order. No layer is named before its test came out wet.</summary>
public static class TestsText
{
    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(TearoutReport report, Walk walk, string language, string when)
    {
        var says = new TearoutSays(walk, language);
        var opening = walk.Book.Opening;
        List<string> lines =
        [
            .. Column.Wrap(Cut.Name(walk.Job.Name)),
            .. Column.Wrap(Heading.Of(says.Telling, when) is var head && when.Length > 0 ? $"{head.Book} - {when}" : head.Book),
            .. TearoutText.Block("before-tests", opening.Before.Select(says.Phrases.Of), says),
            .. TearoutText.Block("done-tests",
                report.Tests.Where(test => test.Wet != Tri.Unknown).Select(test => Done(test, walk.Book, says)), says),
            .. TearoutText.Block("next-tests",
                report.Tests.Where(test => test.Wet == Tri.Unknown).Select(test => ToDo(test.Test, says)), says),
            .. TearoutText.Block("how-far", opening.HowFar.Select(says.Phrases.Of), says),
            .. TearoutText.Block("no-cures", opening.NoCures.Select(says.Phrases.Of), says),
            "",
            .. Column.Wrap(says.Phrases[Phrase.Close.Record]),
        ];
        return string.Join('\n', lines) + "\n";
    }

    private static string ToDo(LeakTest test, TearoutSays says) => Sentence.Joined(
        $"{test.Number}",
        says.Phrases.Of(test.Do),
        Sentence.Closed(Sentence.Capital(says.Phrases.Of(test.Takes))),
        says.Phrases.Say(Phrase.Tearout.DryClears, ("what", says.Phrases.Of(test.Clears))),
        says.Phrases.Of(test.Caution));

    private static string Done(TestSeen test, RuleBook book, TearoutSays says) => test.Wet == Tri.Yes
        ? Sentence.Joined(test.Test.Number, says.Phrases.Say(Phrase.Tearout.WasWet, ("line", says.Line(test.Result!))),
            test.Test.Points.Count == 0 ? ""
            : says.Phrases.Say(Phrase.Tearout.Points,
                ("causes", says.Phrases.List([.. test.Test.Points.Select(id =>
                book.Causes.First(cause => cause.Id == id))
                .Select(cause => $"{cause.Number} {says.Phrases.Of(cause.Name)}")], Phrase.Say.Or))))
        : Sentence.Joined(test.Test.Number,
            says.Phrases.Say(Phrase.Tearout.WasDry, ("line", says.Line(test.Result!)),
            ("what", says.Phrases.Of(test.Test.Clears))));
}
