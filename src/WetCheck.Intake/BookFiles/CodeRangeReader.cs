using System.Globalization;
using System.Text.RegularExpressions;
using WetCheck.Model;

namespace WetCheck.Intake;

/// <summary>Reads <c>IRC</c>, <c>IRC 2021</c>, <c>IRC 2009..</c>, <c>IRC ..2006</c>, <c>IRC 2009..2015</c>.</summary>
internal static partial class CodeRangeReader
{
    public static CodeRange? Read(ScalarNode text, Discipline discipline, ProblemList problems)
    {
        var family = discipline.Families
            .Where(family => StartsWith(text.Text, family.Name))
            .MaxBy(family => family.Name.Length);
        if (family is null)
        {
            problems.Add(text.At,
                Messages.UnknownName($"{discipline.Say.En}", text.Text,
                [.. discipline.Families.Select(known => known.Name)]));
            return null;
        }

        var years = text.Text.Trim()[family.Name.Length..].Trim();
        if (years.Length == 0)
        {
            return new CodeRange(family.Name);
        }

        if (Years().Match(years) is not { Success: true } found || found.Value == "..")
        {
            problems.Add(text.At, Messages.CodeRange(text.Text));
            return null;
        }

        var (from, to) = (Year(found.Groups["from"]), Year(found.Groups["to"]));
        return new CodeRange(family.Name, from, found.Groups["dots"].Success ? to : from);
    }

    private static bool StartsWith(string text, string family) =>
        text.Trim() is var trimmed && trimmed.StartsWith(family, StringComparison.OrdinalIgnoreCase)
        && (trimmed.Length == family.Length || trimmed[family.Length] == ' ');

    private static int? Year(Group digits) => digits.Success ? int.Parse(digits.Value, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(@"^(?<from>\d{4})?(?<dots>\.\.)?(?<to>(?<=\.\.)\d{4})?$", RegexOptions.ExplicitCapture)]
    private static partial Regex Years();
}
