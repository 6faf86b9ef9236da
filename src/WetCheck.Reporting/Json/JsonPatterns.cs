namespace WetCheck.Reporting;

/// <summary>How numbers and rules are written, for the schemas.</summary>
internal static class JsonPatterns
{
    public const string Number = "^[0-9]+(-[A-Z]+)?$";

    public const string Member = "^[0-9]+(-[A-Z]*([0-9]+|-?other)?)?$";

    public const string Rule = "^[a-z]+/[a-z0-9-]+$";
}
