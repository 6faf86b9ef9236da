using System.Globalization;
using WetCheck.Model;

namespace WetCheck.Press;

/// <summary>
/// A problem in the form in which a build tells its errors: <c>rules/liner/turn-up.yaml(3,7): error unknown-unit:
/// ...</c>.
/// </summary>
internal static class BuildError
{
    public static string Line(string folder, Problem problem) => string.Create(
        CultureInfo.InvariantCulture,
        $"{System.IO.Path.GetFullPath(System.IO.Path.Combine(folder, problem.At.File))}"
        + $"({problem.At.Line},{problem.At.Column}): error {problem.Code}: {problem.Say.ReplaceLineEndings(" ")}");
}
