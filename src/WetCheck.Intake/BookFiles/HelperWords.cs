using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>What a helper is told of another's work where the rule has no words of its own for him.</summary>
internal static class HelperWords
{
    private const string Section = "helper.leave.";

    public static Rule Fill(Rule rule, IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> words) =>
        rule.Body is RuleBody.Require
        && rule.Texts.Any(texts => texts.Value.Helper.Length == 0 && Leave(rule, texts.Key, words) is not null)
            ? rule with { Texts = rule.Texts.ToDictionary(texts => texts.Key, texts => Filled(texts.Value, Leave(rule, texts.Key, words))) }
            : rule;

    private static RuleTexts Filled(RuleTexts texts, string? leave) =>
        texts.Helper.Length == 0 && leave is not null ? texts with { Helper = leave } : texts;

    private static string? Leave(Rule rule, string language, IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> words) =>
        words.TryGetValue(language, out var said) && said.TryGetValue(Section + rule.WorkOf, out var leave) ? leave : null;
}
