namespace WetCheck;

/// <summary>Where answers are kept, one a line. It only grows; others may write to it too.</summary>
public interface IAnswerLog
{
    /// <summary>All that stands in it; empty where there is none yet.</summary>
    string Read();

    /// <summary>All that stands in it, where that is another text than was last read or written here; else null.</summary>
    string? News();

    /// <summary>Adds a line. When this returns it is kept for good.</summary>
    /// <param name="answer">As people say it, <c>liner.right: 3</c>, to be told where it can't be kept.</param>
    /// <param name="line">The line for the text that stands in the log now.</param>
    /// <returns>The text with the line, and whether others had written meanwhile.</returns>
    /// <exception cref="RefusedException">It can't be kept. Nothing of it stands in the log.</exception>
    (string Text, bool IsNews) Keep(string answer, Func<string, string> line);
}
