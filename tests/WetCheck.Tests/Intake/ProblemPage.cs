using WetCheck.Model;

namespace WetCheck.Tests.Intake;

/// <summary>Problems as people meet them: the place, the line as typed, a caret, what it is taken for and what to write.</summary>
internal static class ProblemPage
{
    public static string Of(IReadOnlyList<Problem> problems) => string.Concat(problems.Select(Of));

    private static string Of(Problem problem)
    {
        var typed = string.Concat(problem.Typed.Select(c => c == '\t' ? '→' : char.IsControl(c) ? '·' : c));
        var caret = new string(' ', Math.Clamp(problem.At.Column - 1, 0, typed.Length));
        return $"{problem.At}  {problem.Code} ({problem.Effect})\n    {typed}\n    {caret}^ {problem.Say}\n";
    }
}
