using WetCheck.Model;

namespace WetCheck.Reporting;

/// <summary>
/// All that stands behind one cause on a job: what it needs, what speaks for it and against it, with the lines that say
/// so.
/// </summary>
public static class WhyCause
{
    /// <returns>Lines of at most 78, each ended by a line feed.</returns>
    public static string Of(CauseSeen cause, Walk walk, string language, string when)
    {
        var says = new TearoutSays(walk, language);
        var phrases = says.Phrases;
        var lines = new Labelled(phrases);
        lines.Title(cause.Cause.Number, Sentence.Capital(phrases.Of(cause.Cause.Name)),
            phrases["tearout.fit-" + Key(cause.Fit)].ToUpperInvariant(), "");
        lines.Add("needs",
            cause.Cause.Given.Concat(cause.Cause.Needs)
            .Select(need => Sentence.Closed(Sentence.Capital(Conditions.Say(need, null, walk.Book, phrases)))));
        lines.Add("seen", cause.Signs.Select(sign => $"{Sentence.Closed(says.Sign(sign))} {says.Line(sign)}".TrimEnd()));
        lines.Add("missing",
            cause.Missing.Select(need =>
            Sentence.Closed(Sentence.Capital(Conditions.Say(need, null, walk.Book, phrases)))));
        lines.Add("against", cause.Against.Select(sign => $"{Sentence.Closed(says.Sign(sign))} {says.Line(sign)}".TrimEnd()));
        lines.Add("why", Sentence.Joined(phrases.Of(cause.Cause.How), says.Dangers(cause)));
        lines.Add("open", phrases.Of(cause.Cause.Next));
        lines.Add("guards", says.Guards(cause.Cause.Guards));
        lines.Add("says", says.Sources(cause.Cause.Rows).Select(Sentence.Closed));
        lines.Plain(Sentence.Joined(phrases[Phrase.Tearout.Closing],
            $"{Heading.Of(says.Telling, when).Book}{(when.Length > 0 ? "; " + when : "")}.",
            phrases[Phrase.Close.Record]));
        return lines.ToString();
    }

    internal static string Key(Fit fit) =>
        fit switch { Fit.Fits => "fits", Fit.MayBe => "may-be", Fit.RuledOut => "ruled-out", _ => "unseen" };
}
