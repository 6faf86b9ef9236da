using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>
/// Takes a line's value apart into typed texts: a bare one, several in a list, or the long form <c>{ read:, tool:, by:,
/// date:, photo: }</c>.
/// </summary>
internal sealed class AnswerReader(Vocabulary vocabulary, Provenance byAll, ProblemList problems)
{
    private static readonly string[] s_long = ["read", "tool", "by", "date", "photo"];

    public IReadOnlyList<Answer> Read(Node value) => value switch
    {
        ScalarNode scalar when scalar.IsBlank || problems.IsLost(scalar.At) => [],
        ScalarNode scalar when scalar.Quoted && scalar.EndLine > scalar.At.Line => Torn(scalar),
        ScalarNode scalar => scalar.Text.Trim().Length == 0 ? [] : [new Answer(scalar, byAll)],
        ListNode list => [.. list.Items.SelectMany(Read)],
        MapNode map => LongForm(map) is { } answer ? [answer] : [],
        _ => [],
    };

    public static bool IsLongForm(MapNode map) => map.Entries.Any(entry => Names.Find(entry.Key.Text, s_long) is not null);

    private Answer[] Torn(ScalarNode scalar)
    {
        problems.Add(scalar.At, Messages.QuoteOverLines(scalar.Text.Split('\n', ' ')[0], scalar.EndLine));
        return [];
    }

    private Answer? LongForm(MapNode map)
    {
        var by = byAll;
        ScalarNode? read = null;
        var isWhole = true;
        foreach (var entry in map.Entries)
        {
            if (entry.Value is not ScalarNode text)
            {
                problems.Add(entry.Value.At, Messages.OneAnswerHere(entry.Key.Text));
                return null;
            }

            switch (Names.Find(entry.Key.Text, s_long))
            {
                case "read":
                    read = text;
                    break;
                case "by":
                    by = by with { By = text.Text };
                    break;
                case "photo":
                    by = by with { Photo = text.IsBlank ? null : text.Text.Trim() };
                    break;
                case "tool" when !text.IsBlank:
                    var tool = vocabulary.Tools.FirstOrDefault(tool => Names.Same(tool.Name, text.Text));
                    isWhole &= tool is not null || Refuse(text.At, Messages.UnknownTool(text.Text, vocabulary));
                    by = by with { Tool = tool, IsOwn = true };
                    break;
                case "date" when !text.IsBlank:
                    isWhole &= Dates.Read(text.Text) is not null || Refuse(text.At, Messages.DateForm(text.Text));
                    by = by with { Date = text.Text };
                    break;
                case null:
                    isWhole &= Refuse(entry.Key.At, Messages.UnknownAnswerPart(entry.Key.Text, s_long));
                    break;
            }
        }

        return isWhole && read is { IsBlank: false } ? new Answer(read, by) : null;
    }

    private bool Refuse(At at, Message message)
    {
        problems.Add(at, message);
        return false;
    }
}
