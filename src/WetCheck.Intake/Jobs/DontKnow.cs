namespace WetCheck.Intake;

/// <summary>Don't know is an answer: nothing, a question mark, or the words.</summary>
public static class DontKnow
{
    private static readonly string[] Said =
        ["?", "don't know", "dont know", "do not know", "not known", "not sure", "unknown", "no sé", "no se",
        "no lo sé"];

    public static bool Is(string answer) =>
        string.IsNullOrWhiteSpace(answer)
        || Names.Find(answer.Trim().Replace('’', '\'').TrimEnd('.'), Said) is not null;
}
