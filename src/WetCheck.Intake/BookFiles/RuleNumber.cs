using System.Globalization;

namespace WetCheck.Intake;

/// <summary>Reads the number of a rule: whole, above 0.</summary>
internal static class RuleNumber
{
    /// <summary>0, with a problem, where it is none.</summary>
    public static int Read(ScalarNode? text, ProblemList problems)
    {
        if (text is null)
        {
            return 0;
        }

        if (int.TryParse(text.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0)
        {
            return number;
        }

        problems.Add(text.At, Messages.NumberWanted(text.Text));
        return 0;
    }
}
