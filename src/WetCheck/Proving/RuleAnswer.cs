using WetCheck.Engine;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Proving;

/// <summary>What one rule says of one part, in the words of case files.</summary>
/// <param name="Says"><c>ok</c>, <c>correction on paper</c>, <c>yes</c>, <c>shown</c>.</param>
internal sealed record RuleAnswer(Part Part, string Says, IReadOnlyList<FactId> Hangs);

internal static class RuleAnswers
{
    /// <param name="findings">Of the rule, others too.</param>
    public static IReadOnlyList<RuleAnswer> Of(
        Rule rule, Job job, Vocabulary vocabulary, IReadOnlyList<Finding> findings, IReadOnlyList<Conclusion> conclusions)
    {
        var own = findings.Where(finding => finding.Rule == rule).ToList();
        return rule.Body switch
        {
            RuleBody.Require => [.. Results.Checks(job, vocabulary, own).Select(Of)],
            RuleBody.Conclude conclude =>
                [.. conclusions.Where(one => one.Reading == conclude.Reading.Name
                && (one.Rule is null || one.Rule == rule))
                .Select(one => new RuleAnswer(one.Part, Word(one.Now), [.. one.Hangs.Select(hang => hang.Id)]))],
            RuleBody.Caution => Shown(rule, job, Results.Cautions(job, own)),
            _ => Shown(rule, job, Results.Notes(own)),
        };
    }

    private static RuleAnswer Of(Check check) =>
        new(check.Part, Word(check), [.. check.Judgement.Hangs.Concat(check.Judgement.HangsOnPaper).Select(hang => hang.Id)]);

    private static List<RuleAnswer> Shown(Rule rule, Job job, IReadOnlyList<Check> shown) =>
    [
        .. job.Parts.Where(part => part.Part.Kind == rule.Part)
            .Select(part =>
                new RuleAnswer(part.Part,
                shown.Any(check => check.Rule == rule && check.Part == part.Part) ? "shown" : "silent", [])),
    ];

    private static string Word(Tri tri) => tri switch
    {
        Tri.Yes => "yes",
        Tri.No => "no",
        _ => "unknown",
    };

    private static string Word(Check check) => check.Paper == Paper.None
        ? Keys.Of(check.Result)
        : $"{Keys.Of(check.Result)} {Keys.Of(check.Paper).Replace('-', ' ')}";
}
