using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads one local change: another limit, more versions, a rule set aside, or a rule of one's own.</summary>
internal sealed class ChangeReader(ProblemList problems)
{
    private const string Chapter = "local/";
    private const int First = 901;
    private const int Last = 999;

    /// <summary>The book with the change; as it was where the change can't be read.</summary>
    /// <param name="sourceOf">The source of this change, from its section.</param>
    public RuleBook Read(RuleBook book, Node node, Func<string, SourceEntry> sourceOf)
    {
        if (Fields.Of(node, problems) is not { } fields)
        {
            return book;
        }

        fields.Demand("rule");
        var source = sourceOf(fields.Text("section") ?? "");
        var changed = fields.Scalar("rule") is not { } name ? book
            : fields.Has("number") ? Added(book, (MapNode)node, name, source.Row)
            : book.Rules.FirstOrDefault(rule => Names.Same(rule.Id, name.Text)) is { } rule ? Changed(book, rule, fields, source.Row)
            : Refused(book, name.At, Messages.LocalRule(name.Text, [.. book.Rules.Select(known => known.Id)]));
        return changed with
        {
            Sources = new Dictionary<string,
            IReadOnlyList<SourceEntry>>(changed.Sources, StringComparer.Ordinal)
            { [source.Row] = [source] },
        };
    }

    private RuleBook Changed(RuleBook book, Rule rule, Fields fields, string row)
    {
        if (fields.Yes("set aside"))
        {
            fields.Done();
            return book with
            {
                Rules = [.. book.Rules.Where(one => one != rule)
                .Select(one => one.YieldsTo == rule.Id ? one with { YieldsTo = null } : one)]
            };
        }

        var now = fields.Scalar("limit") is { } limit
            ? new LimitChange(rule, row, problems).To(limit, fields.Scalar("instead of"))
            : rule;
        var lines = fields.Maps("versions");
        if (lines.Count > 0)
        {
            now = now with
            {
                Versions = [.. now.Versions,
                .. Versions(book, rule, fields, lines.Any(line => line.Has("limit")))
                .Select(version => version with { Rows = [row] })]
            };
        }
        else if (now == rule && !problems.Any)
        {
            problems.Add(fields.At, Messages.LocalNothing(rule.Id));
        }

        fields.Done();
        return book with { Rules = [.. book.Rules.Select(one => one == rule ? now : one)] };
    }

    /// <summary>Versions with a requirement of their own need not ask for the rule's limit.</summary>
    private IReadOnlyList<RuleVersion> Versions(RuleBook book, Rule rule, Fields fields, bool haveLimit) =>
        new VersionReader(new ConditionReader(book.Vocabulary, problems), rule.Part)
            .Read(fields, haveLimit ? rule.Body : new RuleBody.Require(null));

    private RuleBook Added(RuleBook book, MapNode node, ScalarNode name, string row)
    {
        if (!name.Text.StartsWith(Chapter, StringComparison.Ordinal))
        {
            return Refused(book, name.At, Messages.LocalName(name.Text));
        }

        var own = node with { Entries = [.. node.Entries.Where(entry => !Names.Same(entry.Key.Text, "section"))] };
        if (new RuleReader(book.Vocabulary, problems).Read(name.Text, own) is not { } rule)
        {
            return book;
        }

        if (rule.Number is > 0 and (< First or > Last))
        {
            return Refused(book, name.At, Messages.LocalNumber(rule.Number));
        }

        rule = rule with { Rows = [row], Versions = [.. rule.Versions.Select(version => version with { Rows = [row] })] };
        return book with { Rules = [.. book.Rules.Append(rule).OrderBy(one => one.Number)] };
    }

    private RuleBook Refused(RuleBook book, At at, Message message)
    {
        problems.Add(at, message);
        return book;
    }
}
