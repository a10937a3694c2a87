using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>A program behind a line that can be cut, and Chromium.</summary>
public sealed class KeptFixture : IAsyncLifetime
{
    private readonly BrowserFixture browser = new();

    public DroppingProxy Line { get; private set; } = default!;

    public RunningApp App => browser.App;

    public async ValueTask InitializeAsync()
    {
        await browser.InitializeAsync();
        if (BrowserFixture.Chromium is not null)
            Line = new DroppingProxy(App.Address.Port);
    }

    /// <summary>A browser profile of its own, behind the line that can be cut.</summary>
    public Task<IPage> OpenAsync(Screen? screen = null, bool dark = false)
    {
        Line?.Restore();
        return browser.OpenAsync(screen ?? Screen.Desktop, dark, at: Line?.Address);
    }

    /// <summary>A browser profile of its own at another address.</summary>
    public Task<IPage> OpenAtAsync(Uri address) => browser.OpenAsync(Screen.Desktop, at: address);

    /// <summary>A browser profile of its own that reaches the program whatever the line does: another device.</summary>
    public Task<IPage> OpenElsewhereAsync() => browser.OpenAsync(Screen.Desktop);

    /// <summary>A tablet with a browser of its own, whose profile outlives it, behind the line that can be cut. It opens the
    /// program by the computer's name, as on a home network: a browser allows far less there than on localhost.</summary>
    public Task<IBrowserContext> OpenTabletAsync(string profile)
    {
        Line?.Restore();
        var name = Environment.MachineName.ToLowerInvariant();
        return browser.OpenProfileAsync(
            profile,
            Line is null ? null : new Uri($"http://{name}:{Line.Address.Port}"),
            $"--host-resolver-rules=MAP {name} 127.0.0.1"
        );
    }

    public async Task RestartAsync()
    {
        await App.StartAgainAsync(TestContext.Current.CancellationToken);
        Line.Target = App.Address.Port;
    }

    public async ValueTask DisposeAsync()
    {
        if (Line is not null)
            await Line.DisposeAsync();
        await browser.DisposeAsync();
    }
}
