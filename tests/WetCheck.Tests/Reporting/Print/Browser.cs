using Microsoft.Playwright;

namespace WetCheck.Tests.Reporting.Print;

/// <summary>
/// A browser without a window, to look at pages as a phone and a printer do. Skipped where there is none;
/// <c>.ci/run</c> has one.
/// </summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    private static string? Program { get; } =
        new[] { Environment.GetEnvironmentVariable("CHROMIUM"), "/usr/bin/chromium", "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome" }.FirstOrDefault(File.Exists);

    public async ValueTask InitializeAsync()
    {
        if (Program is null)
        {
            return;
        }

        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Program,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        await (_browser?.DisposeAsync() ?? ValueTask.CompletedTask);
        _playwright?.Dispose();
    }

    /// <summary>The page on a screen of this size, with whatever it tried to fetch.</summary>
    public async Task<(IPage Page, List<string> Fetched)> Open(string html, int width, int height)
    {
        Assert.SkipUnless(_browser is not null, "there is no Chromium on this machine");

        // The page forbids itself to load anything. Without that, what it would load is seen, and the fonts of the tests can be.
        var page = await _browser!.NewPageAsync(new BrowserNewPageOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            BypassCSP = true,
        });
        var fetched = new List<string>();
        page.Request += (_, request) => fetched.Add(request.Url);
        await page.SetContentAsync(TestFonts.In(html));
        await page.EvaluateAsync("() => Promise.all([...document.fonts].map(font => font.load())).then(() => true)");
        fetched.RemoveAll(url => url.StartsWith("data:font/", StringComparison.Ordinal));
        return (page, fetched);
    }
}
