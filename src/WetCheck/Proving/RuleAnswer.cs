using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck;

/// <summary>What one rule says of one part, in the words of case files.</summary>
/// <param name="Says"><c>ok</c>, <c>correction on paper</c>, <c>yes</c>, <c>shown</c>.</param>
internal sealed record RuleAnswer(Part Part, string Says, IReadOnlyList<FactId> Hangs);

internal static class RuleAnswers
{
    public static IReadOnlyList<RuleAnswer> Of(Rule rule, KeptWalk kept)
    {
        var walk = kept.Walk([]);
        return rule.Body switch
        {
            RuleBody.Require => [.. walk.Checks.Where(check => check.Rule == rule).Select(Of)],
            RuleBody.Conclude conclude => [.. kept.Conclusions.Where(one => one.Reading == conclude.Reading.Name && (one.Rule is null || one.Rule == rule))
                .Select(one => new RuleAnswer(one.Part, Word(one.Now), [.. one.Hangs.Select(hang => hang.Id)]))],
            RuleBody.Caution => Shown(rule, kept.Job, walk.Cautions),
            _ => Shown(rule, kept.Job, walk.Notes),
        };
    }

    private static RuleAnswer Of(Check check) =>
        new(check.Part, Word(check), [.. check.Judgement.Hangs.Concat(check.Judgement.HangsOnPaper).Select(hang => hang.Id)]);

    private static List<RuleAnswer> Shown(Rule rule, Job job, IReadOnlyList<Check> shown) =>
    [
        .. job.Parts.Where(part => part.Part.Kind == rule.Part)
            .Select(part => new RuleAnswer(part.Part, shown.Any(check => check.Rule == rule && check.Part == part.Part) ? "shown" : "silent", [])),
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
