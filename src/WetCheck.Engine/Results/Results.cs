using WetCheck.Model;

namespace WetCheck.Engine;

/// <summary>From findings to the walk that every list is made from.</summary>
public static class Results
{
    public static Walk Of(Job job, RuleBook book, IReadOnlyList<Finding> findings, IReadOnlyList<Problem> problems)
    {
        var checks = Checks(job, book.Vocabulary, findings);
        var entries = Folding.Of(job, [.. checks.Where(check => !IsRuledOut(job, check.State))]);
        return new Walk(job, book, entries, checks, Looks.Of(job, book.Vocabulary, entries),
            Cautions(job, findings),
            Notes(findings),
            problems);
    }

    /// <summary>Rules with a requirement, each with its result at this stop.</summary>
    public static IReadOnlyList<Check> Checks(Job job, Vocabulary vocabulary, IReadOnlyList<Finding> findings) =>
        [.. findings.Where(finding => finding.Rule.Body is RuleBody.Require).Select(finding => Check(job, vocabulary, finding))];

    /// <summary>Those that are shown at this stop.</summary>
    public static IReadOnlyList<Check> Cautions(Job job, IReadOnlyList<Finding> findings) =>
        [.. findings.Where(finding => IsShown(job, finding)).Select(finding => Plain(finding, Result.Caution))];

    /// <summary>Those whose condition is met, by what was read or by what is planned.</summary>
    public static IReadOnlyList<Check> Notes(IReadOnlyList<Finding> findings) => [.. findings.Select(Note).OfType<Check>()];

    /// <summary>A part that the method never has is no part of the job: it stands on no list.</summary>
    private static bool IsRuledOut(Job job, PartState state)
    {
        if (state.Exists != Tri.No || job.Method is not { } method)
        {
            return false;
        }

        for (var part = state.Part; part is not null; part = part.Above)
        {
            if (method.Never(part.Kind, part.Place))
            {
                return true;
            }
        }

        return false;
    }

    private static Check Check(Job job, Vocabulary vocabulary, Finding finding)
    {
        var judgement = finding.Judgement;
        if (judgement.Now != Outcome.Open)
        {
            return Plain(finding, judgement.Now switch
            {
                Outcome.Ok => Result.Ok,
                Outcome.Correction => Result.Correction,
                _ => Result.NotHere,
            });
        }

        // On paper: the plan falls short, and nothing that it hangs on has been begun. The cheapest time to mend it.
        var owed = Owed.Of(job, vocabulary, judgement.Hangs);
        var begun = judgement.Hangs.Any(hang => hang.Near || Owed.SightOf(job, vocabulary, hang) != Sight.NotBegun);
        var (result, paper) = judgement.OnPaper switch
        {
            Outcome.Correction => begun ? (owed, Paper.Short) : (Result.Correction, Paper.Correction),
            Outcome.Ok => (owed, Paper.Good),
            _ => (owed, Paper.None),
        };
        return new Check(finding.Rule, finding.State, judgement, result, paper, paper == Paper.None ? [] : Holds.Of(judgement));
    }

    private static Check Plain(Finding finding, Result result) =>
        new(finding.Rule, finding.State, finding.Judgement, result, Paper.None, []);

    /// <summary>Of what is there, and of what is planned: before it is covered a note is worth the most.</summary>
    private static Check? Note(Finding finding) => finding switch
    {
        { Rule.Body: not RuleBody.Note } => null,
        { Judgement.Now: Outcome.Ok } => Plain(finding, Result.Note),
        { Judgement: { Now: Outcome.Open, OnPaper: Outcome.Ok } } => Plain(finding, Result.Note) with { Paper = Paper.Good },
        _ => null,
    };

    /// <summary>
    /// A caution stands from one stop until another, and at that one no longer, unless its condition is No. A stop the
    /// method does not have is passed by.
    /// </summary>
    private static bool IsShown(Job job, Finding finding)
    {
        if (finding.Rule.Body is not RuleBody.Caution caution || finding.Judgement.Now == Outcome.NotHere)
        {
            return false;
        }

        if (job.Method is not { } method || job.Stage is not { } stage)
        {
            return true;
        }

        var (now, from, until) =
            (method.IndexOf(stage), caution.From is { } first ? method.IndexOf(first) : 0,
            method.IndexOf(caution.Until));
        return now >= from && (until < 0 || now < until);
    }
}
