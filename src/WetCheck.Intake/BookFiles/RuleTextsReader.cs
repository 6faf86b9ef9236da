using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads a rule's own words, <c>en:</c> and <c>es:</c>. What each kind of rule must say differs.</summary>
internal static partial class RuleTextsReader
{
    private static readonly string[] s_slots = ["found", "limit", "short", "count", "place", "part"];

    public static IReadOnlyDictionary<string, RuleTexts> Read(Fields rule, string body, bool isOwed)
    {
        var texts = new Dictionary<string, RuleTexts>(StringComparer.Ordinal);
        rule.Demand("en");
        foreach (var language in new[] { "en", "es" })
        {
            if (rule.Map(language) is { } fields)
            {
                texts[language] = Language(fields, body, isOwed);
                fields.Done();
            }
        }

        return texts;
    }

    private static RuleTexts Language(Fields fields, string body, bool isOwed)
    {
        string[] needed = body switch
        {
            "caution" => ["say", "two"],
            "note" => ["say", "why"],
            "conclude" => [],
            _ => ["name", "why", "fix"],
        };
        foreach (var line in needed)
        {
            fields.Demand(line);
        }

        var name = fields.Take("name") is MapNode map ? new Fields(map, fields.Problems) : null;
        var owner = fields.Map("owner");
        if (isOwed)
        {
            fields.Demand("owner");
        }

        var texts = new RuleTexts(
            name is null ? Text(fields, "name") : Text(name, "one"),
            name is null ? "" : Text(name, "many"),
            Text(fields, "say"),
            Text(fields, "two"),
            Text(fields, "why"),
            Text(fields, "fix"),
            Text(owner, "seen", isOwed),
            Text(owner, "ask", isOwed),
            Text(owner, "good", isOwed),
            Text(fields, "helper"),
            Text(owner, "see"));
        name?.Done();
        owner?.Done();
        return texts;
    }

    private static string Text(Fields? fields, string line, bool isNeeded = false)
    {
        if (isNeeded)
        {
            fields?.Demand(line);
        }

        if (fields?.Scalar(line) is not { } scalar)
        {
            return "";
        }

        foreach (Match slot in Slot().Matches(scalar.Text))
        {
            if (!slot.Groups[2].Success)
            {
                fields.Problems.Add(scalar.Within(slot.Index), Messages.SlotUnclosed(slot.Value));
            }
            else if (!s_slots.Contains(slot.Groups[1].Value))
            {
                fields.Problems.Add(scalar.Within(slot.Index), Messages.UnknownSlot(slot.Groups[1].Value));
            }
        }

        return scalar.Text.Trim();
    }

    [GeneratedRegex(@"\{([^{}]*)(\})?")]
    private static partial Regex Slot();
}
