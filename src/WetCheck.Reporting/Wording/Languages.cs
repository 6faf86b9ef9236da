namespace WetCheck.Reporting;

/// <summary>The languages a list is written in.</summary>
public static class Languages
{
    public const string English = "en";

    public const string Spanish = "es";

    public const string Both = "both";

    /// <summary>What can be typed after <c>--lang</c>.</summary>
    public static readonly string[] Typed = [English, Spanish, Both];

    public static IReadOnlyList<string> Of(string typed) => typed == Both ? [English, Spanish] : [typed];
}
