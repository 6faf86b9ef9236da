using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads <c>sources.yaml</c>: rows, each with who says so in which code.</summary>
internal static class SourcesReader
{
    public static IReadOnlyDictionary<string, IReadOnlyList<SourceEntry>> Read(Node? root, ProblemList problems)
    {
        var rows = new Dictionary<string, IReadOnlyList<SourceEntry>>(StringComparer.Ordinal);
        foreach (var entry in Fields.Of(root, problems)?.All() ?? [])
        {
            var items = entry.Value is ListNode list ? list.Items : [entry.Value];
            rows[entry.Key.Text] =
                [.. items.Select(item => Fields.Of(item, problems)).OfType<Fields>()
                .Select(fields => EntryOf(entry.Key.Text, fields))];
        }

        return rows;
    }

    private static SourceEntry EntryOf(string row, Fields fields)
    {
        fields.Demand("status");
        var entry = new SourceEntry(
            row,
            fields.Need("publisher"),
            fields.Text("document") ?? "",
            fields.Text("section") ?? "",
            fields.Text("editions") ?? "",
            fields.Text("of"),
            Lookup.Enum<SourceStatus>(fields.Scalar("status"), FormWords.Statuses, "status", fields.Problems) ?? SourceStatus.FromMemory);
        fields.Done();
        return entry;
    }
}
