using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Reads a file of cases: jobs, and what a rule must say of each. A list; or <c>given:</c>, lines that each job has unless it says
/// otherwise, and the list under <c>cases:</c>.
/// </summary>
internal static class CaseReader
{
    /// <summary>Every result that a case may expect.</summary>
    public static readonly IReadOnlyList<string> Results =
    [
        "ok", "correction", "correction on paper",
        .. new[] { "to-check", "read-again", "later", "hidden" }
            .SelectMany(open => new[] { open, $"{open} short on paper", $"{open} good on paper" }),
        "not-here", "yes", "no", "unknown", "shown", "silent",
    ];

    /// <param name="rule">The rule's id by the path of the file.</param>
    public static IReadOnlyList<RuleCase> Read(string rule, SourceText source, Node root, ProblemList problems)
    {
        var head = root is MapNode ? Fields.Of(root, problems) : null;
        var given = head?.Take("given");
        var cases = head is null ? root : head.Take("cases");
        head?.Done();
        if (cases is not ListNode list || given is not (null or MapNode))
        {
            problems.Add((given is null or MapNode ? cases : given)?.At ?? root.At, Messages.ListWanted());
            return [];
        }

        return
        [
            .. list.Items.Select(item => Fields.Of(item, problems)).OfType<Fields>()
                .Select(fields => Case(rule, source, given as MapNode, fields)),
        ];
    }

    private static RuleCase Case(string rule, SourceText source, MapNode? given, Fields fields)
    {
        var job = fields.Take("job");
        if (job is not MapNode)
        {
            fields.Problems.Add(job?.At ?? fields.At, Messages.JobWanted());
        }

        var expect = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in fields.Map("expect")?.All() ?? [])
        {
            if (entry.Value is ScalarNode word && Names.Find(word.Text, Results) is { } result)
            {
                expect[entry.Key.Text] = result;
            }
            else
            {
                fields.Problems.Add(entry.Value.At, Messages.ExpectWord((entry.Value as ScalarNode)?.Text ?? ""));
            }
        }

        fields.Demand("expect");

        var read = new RuleCase(
            rule,
            fields.Need("name"),
            job is MapNode map ? GivenJob.Text(source, given, map, fields.Problems) : "",
            expect,
            [.. fields.Texts("asks").Select(text => text.Text)],
            fields.At);
        fields.Done();
        return read;
    }
}
