using WetCheck.Asking;

namespace WetCheck;

/// <summary>One question: what to look at, how, and what can be answered.</summary>
public sealed class Asked
{
    internal Asked(Question question, IReadOnlyList<string> lines)
    {
        (Question, Lines) = (question, lines);
    }

    /// <summary>As it is read out, line by line.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>The number of the list that it settles; empty: none.</summary>
    public string Number => Question.Look.Number;

    /// <summary>The line of the job file that it fills: <c>liner.right</c>.</summary>
    public string Line => Question.Line.Path;

    /// <summary>It was read, and is read once more.</summary>
    public bool IsAgain => Question.IsAgain;

    internal Question Question { get; }
}
