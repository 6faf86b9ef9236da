using System.Globalization;
using WetCheck.Engine;
using WetCheck.Model;

namespace WetCheck.Tests.Proof;

/// <summary>Findings and conclusions as lines, so that two ways of working them out can be compared whole.</summary>
internal static class Spoken
{
    public static IEnumerable<string> Of(IEnumerable<Finding> findings, IEnumerable<Conclusion> conclusions) =>
        findings.Select(Of).Concat(conclusions.Select(Of)).Order(StringComparer.Ordinal);

    /// <summary>Only what it comes to.</summary>
    public static IEnumerable<string> Verdicts(IEnumerable<Finding> findings) =>
        findings.Select(finding =>
            $"{finding.Rule.Id} {finding.State.Part} {finding.Judgement.Now} {finding.Judgement.OnPaper}")
            .Order(StringComparer.Ordinal);

    private static string Of(Finding finding) =>
        string.Create(CultureInfo.InvariantCulture,
            $"{finding.Rule.Id} {finding.State.Part}: {finding.Judgement.Now} {Of(finding.Judgement.Hangs)} "
            + $"{Of(finding.Judgement.Sides)}, on paper {finding.Judgement.OnPaper} "
            + $"{Of(finding.Judgement.HangsOnPaper)} {Of(finding.Judgement.SidesOnPaper)}");

    private static string Of(Conclusion one) =>
        string.Create(CultureInfo.InvariantCulture,
            $"{one.Part} {one.Reading} by {one.Rule?.Id}: {one.Now} {Of(one.Hangs)}, on paper {one.OnPaper} {Of(one.HangsOnPaper)}");

    private static string Of(IReadOnlyList<Hang> hangs) =>
        $"[{string.Join(", ", hangs.Select(hang => string.Create(CultureInfo.InvariantCulture, $"{hang.Id} {hang.Phase} {hang.Near}")))}]";

    private static string Of(IReadOnlyList<Side> sides) => string.Join(" | ", sides.Select(side =>
        string.Create(CultureInfo.InvariantCulture,
            $"{string.Join(',', side.Versions.Select(version => version.At.Line))} {string.Join(',', side.Codes)} "
            + $"{side.Outcome} {string.Join(',', side.Tests.Select(Of))}")));

    private static string Of(Measured test) =>
        string.Create(CultureInfo.InvariantCulture,
            $"{test.Of} {test.Answer} {test.Slack} {string.Join('+', test.Counted.Select(one => one.Fact.Id))}");
}
