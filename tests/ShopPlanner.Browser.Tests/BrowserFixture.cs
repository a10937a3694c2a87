using Microsoft.Playwright;

// Each class runs a program and a browser of its own: side by side they would outlast each other's patience on a small machine.
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]

namespace ShopPlanner.Browser.Tests;

/// <summary>One program and one Chromium for the tests of a class; each test opens pages of its own.</summary>
public class BrowserFixture : IAsyncLifetime
{
    private const float Patience = 45_000;

    private static readonly string[] Switches =
    [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ];

    private IPlaywright? playwright;
    private IBrowser? browser;
    private RunningApp? app;
    private string? latest;

    /// <summary>Path of Debian's Chromium, or of the browser named by SHOP_PLANNER_CHROMIUM; null when there is none.</summary>
    public static string? Chromium { get; } =
        new[]
        {
            Environment.GetEnvironmentVariable("SHOP_PLANNER_CHROMIUM"),
            "/usr/bin/chromium",
            "/usr/bin/chromium-browser",
        }.FirstOrDefault(File.Exists);

    public Uri Address => app!.Address;

    public RunningApp App => app!;

    public async ValueTask InitializeAsync()
    {
        if (Chromium is null)
            return;
        app = await StartAsync(TestContext.Current.CancellationToken);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium, Args = Switches });
    }

    /// <summary>A fresh browser profile; skips the test, with the reason, where there is no Chromium.</summary>
    public async Task<IPage> OpenAsync(Screen screen, bool dark = false, bool script = true, Uri? at = null)
    {
        Assert.SkipWhen(
            browser is null,
            "There is no Chromium here: install Debian's package 'chromium', or name a browser in SHOP_PLANNER_CHROMIUM."
        );
        await CloseEarlierAsync();
        var context = await browser.NewContextAsync(
            new()
            {
                BaseURL = (at ?? Address).ToString(),
                ViewportSize = new() { Width = screen.Width, Height = screen.Height },
                ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
                JavaScriptEnabled = script,
                HasTouch = screen.Touch,
                AcceptDownloads = true,
            }
        );
        // A busy machine takes its time; what never comes fails all the same.
        context.SetDefaultTimeout(Patience);
        Assertions.SetDefaultExpectTimeout(Patience);
        context.Page += (_, page) => LastSeenAttribute.Watch(page);
        return await context.NewPageAsync();
    }

    /// <summary>A browser of its own on a profile that stays when it is closed; skips the test where there is no
    /// Chromium.</summary>
    public async Task<IBrowserContext> OpenProfileAsync(string profile, Uri? at = null, params string[] more)
    {
        Assert.SkipWhen(playwright is null, "There is no Chromium here: install Debian's package 'chromium'.");
        var context = await playwright.Chromium.LaunchPersistentContextAsync(
            profile,
            new()
            {
                ExecutablePath = Chromium,
                Args = [.. Switches, .. more],
                BaseURL = (at ?? Address).ToString(),
                ViewportSize = new() { Width = Screen.Tablet.Width, Height = Screen.Tablet.Height },
                HasTouch = true,
            }
        );
        context.SetDefaultTimeout(Patience);
        context.Page += (_, page) => LastSeenAttribute.Watch(page);
        return context;
    }

    // Pages that an earlier test left open would go on trying to reach the program that this one stops and starts.
    private async Task CloseEarlierAsync()
    {
        var test = TestContext.Current.Test?.UniqueID;
        if (test == latest)
            return;
        latest = test;
        foreach (var context in browser!.Contexts.ToList())
            await context.CloseAsync();
    }

    /// <summary>Starts the program that the tests of the class use.</summary>
    protected virtual Task<RunningApp> StartAsync(CancellationToken cancel) => RunningApp.StartAsync(cancel);

    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
        if (app is not null)
            await app.DisposeAsync();
    }
}

/// <summary>As <see cref="BrowserFixture"/>, with a shop that nobody has used yet.</summary>
public sealed class EmptyShopFixture : BrowserFixture
{
    protected override Task<RunningApp> StartAsync(CancellationToken cancel) => RunningApp.StartEmptyAsync(cancel);
}

/// <summary>A size of screen that the planner is used on.</summary>
public sealed record Screen(string Name, int Width, int Height, bool Touch)
{
    public static readonly Screen Desktop = new("desktop", 1440, 900, false);
    public static readonly Screen Tablet = new("tablet", 1280, 800, true);
    public static readonly Screen Phone = new("phone", 390, 844, true);

    public static readonly Screen[] All = [Desktop, Tablet, Phone];
}
