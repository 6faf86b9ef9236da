using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// What old work's look accounts for, on a screen: the hazards first, then what was seen, what accounts for it, what to
/// open next.
/// </summary>
public static class TearoutText
{
    private const string Indent = "  ";

    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(TearoutReport report, Walk walk, string language, string when)
    {
        var says = new TearoutSays(walk, language);
        List<string> lines =
        [
            .. Column.Wrap(Cut.Name(walk.Job.Name)),
            .. Column.Wrap(Heading.Of(says.Telling, when) is var head && when.Length > 0 ? $"{head.Book} - {when}" : head.Book),
            .. Block("gate", says.Gate(report), says),
            .. Block("expect",
                report.Expected.Select(one => says.Phrases.Of(one.Say))
                .Concat(report.Expected.Count > 0 ? [says.Phrases[Phrase.Tearout.ExpectDoubt]] : []), says),
            .. Block("seen", report.Signs.Select(sign => Ended(says.Sign(sign), says.Line(sign))), says),
            .. Sets(report, says),
            .. Block("leftover", report.Leftover.Select(says.Sign), says),
            .. Block("may-be", report.Causes.Where(cause => cause.Fit == Fit.MayBe).Select(cause => May(cause, says)), says),
            .. Block("next", Next(report, says), says),
            .. Block("guards", says.Guards(report.InSome.SelectMany(cause => cause.Cause.Guards)), says),
            .. Block("no-cures", report.Signs.Count > 0 ? walk.Book.Opening.NoCures.Select(says.Phrases.Of) : [], says),
            "",
            .. Column.Wrap(says.Phrases[Phrase.Tearout.Closing]),
            .. Column.Wrap(says.Phrases[Phrase.Close.Record]),
        ];
        return string.Join('\n', lines) + "\n";
    }

    private static string Ended(string text, string line) => line.Length == 0 ? Sentence.Closed(text) : $"{Sentence.Closed(text)} ({line})";

    internal static IEnumerable<string> Block(string key, IEnumerable<string> said, TearoutSays says)
    {
        var lines = said.SelectMany(one => Column.Wrap(one, Indent)).ToList();
        return lines.Count == 0 ? [] : ["", says.Phrases["tearout." + key], .. lines];
    }

    private static IEnumerable<string> Sets(TearoutReport report, TearoutSays says)
    {
        var all = report.InAll.ToList();
        var either = report.Sets.Select(set => set.Except(all).ToList()).Where(set => set.Count > 0).ToList();
        return report.Sets.Count == 0
            ? Block("accounts", report.Signs.Count > 0 ? [says.Phrases[Phrase.Tearout.NoneFits]]
                : [says.Phrases[Phrase.Tearout.NothingSeen]], says)
            :
            [
                .. Block("accounts", all.Select(cause => Told(cause, says)), says),
                .. either.Count == 0 ? []
                    : Block("either",
                    either.Select(set =>
                    Sentence.Closed(string.Join(" + ",
                    set.Select(cause => $"{cause.Cause.Number} {says.Phrases.Of(cause.Cause.Name)}"))))
                    .Append(says.Phrases[Phrase.Tearout.Equal])
                        .Concat(either.SelectMany(set => set).Distinct().Select(cause => Told(cause, says))), says),
            ];
    }

    private static string Told(CauseSeen cause, TearoutSays says) => Sentence.Joined(
        Sentence.Closed($"{cause.Cause.Number} {Sentence.Capital(says.Phrases.Of(cause.Cause.Name))}"),
        says.Phrases.Of(cause.Cause.How),
        says.Phrases.Say(Phrase.Tearout.By, ("signs", says.Signs(cause.Signs))),
        says.Dangers(cause));

    private static string May(CauseSeen cause, TearoutSays says) => Sentence.Joined(
        Sentence.Closed($"{cause.Cause.Number} {Sentence.Capital(says.Phrases.Of(cause.Cause.Name))}"),
            says.Phrases.Say(Phrase.Tearout.If, ("needs", says.Missing(cause))));

    /// <summary>To be surer of what fits, then what would show what may be.</summary>
    private static IEnumerable<string> Next(TearoutReport report, TearoutSays says) =>
        report.InSome.Concat(report.Causes.Where(cause => cause.Fit == Fit.MayBe))
        .GroupBy(cause => says.Phrases.Of(cause.Cause.Next))
        .Select(group =>
            Sentence.Joined(group.Key,
            says.Phrases.Say(Phrase.Tearout.Shows,
            ("causes", says.Phrases.List([.. group.Select(cause => cause.Cause.Number)])))));
}
