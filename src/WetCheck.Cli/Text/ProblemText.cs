using WetCheck.Model;

namespace WetCheck.Cli.Text;

/// <summary>A problem as it is met on a screen: the place, the line as typed, a caret, what it is taken for and what to write.</summary>
internal static class ProblemText
{
    private const string Indent = "    ";

    public static void Write(IReadOnlyList<Problem> problems, TextWriter to)
    {
        foreach (var problem in problems)
        {
            to.WriteLine(problem.At);
            if (problem.Typed.Length > 0)
            {
                to.WriteLine(Indent + problem.Typed.Replace('\t', '→'));
                to.Write(new string(' ', Indent.Length + Math.Clamp(problem.At.Column - 1, 0, problem.Typed.Length)) + "^ ");
            }
            else
            {
                to.Write(Indent);
            }

            to.WriteLine(problem.Say);
        }
    }
}
