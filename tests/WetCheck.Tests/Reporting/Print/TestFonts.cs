using WetCheck.Tests.Conventions;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>One family for every page that is looked at, whatever fonts the machine has.</summary>
internal static class TestFonts
{
    private static readonly Lazy<string> Style = new(() => $$"""
        <style>
        @font-face { font-family: shipped; font-weight: 400; src: url(data:font/woff2;base64,{{Data("regular")}}); }
        @font-face { font-family: shipped; font-weight: 700; src: url(data:font/woff2;base64,{{Data("bold")}}); }
        *, *::before, *::after { font-family: shipped !important; }
        @page { @bottom-left { font-family: shipped; } @bottom-right { font-family: shipped; } }
        </style>
        """);

    /// <summary>The page with the fonts in its head; a drawing, which has no head, with them before it.</summary>
    public static string In(string html)
    {
        var end = html.IndexOf("</head>", StringComparison.Ordinal);
        return end < 0 ? Style.Value + html : html.Insert(end, Style.Value);
    }

    private static string Data(string face) =>
        Convert.ToBase64String(File.ReadAllBytes(Path.Combine(Repository.Root, "tests/fonts", face + ".woff2")));
}
