namespace WetCheck.Intake;

/// <summary>Reads <c>words/en.yaml</c>: key and text, or groups of them; a group's name and a key are joined with a dot.</summary>
internal static class WordsReader
{
    public static IReadOnlyDictionary<string, string> Read(Node? root, ProblemList problems)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in Fields.Of(root, problems)?.All() ?? [])
        {
            Add(words, entry.Key.Text, entry.Value, problems);
        }

        return words;
    }

    private static void Add(Dictionary<string, string> words, string key, Node value, ProblemList problems)
    {
        switch (value)
        {
            case ScalarNode scalar:
                words[key] = scalar.Text;
                break;
            case MapNode group:
                foreach (var entry in group.Entries)
                {
                    Add(words, $"{key}.{entry.Key.Text}", entry.Value, problems);
                }

                break;
            default:
                problems.Add(value.At, Messages.TextWanted());
                break;
        }
    }
}
