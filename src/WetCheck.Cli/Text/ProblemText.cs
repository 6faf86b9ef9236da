using System.Text;
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
            to.WriteLine(Of(problem));
        }
    }

    public static string Of(Problem problem)
    {
        var text = new StringBuilder().Append(problem.At).Append('\n').Append(Indent);
        if (problem.Typed.Length > 0)
        {
            text.Append(problem.Typed.Replace('\t', '→')).Append('\n').Append(Indent)
                .Append(' ', Math.Clamp(problem.At.Column - 1, 0, problem.Typed.Length)).Append("^ ");
        }

        return text.Append(problem.Say).ToString();
    }
}
