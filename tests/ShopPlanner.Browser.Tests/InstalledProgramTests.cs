using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// A program that runs already, with the demo, at the address in SHOP_PLANNER_ADDRESS: deploy/try-in-root.sh starts one.
/// </summary>
public sealed partial class InstalledProgramTests
{
    [Fact(Explicit = true)]
    public async Task The_demo_is_planned_and_its_packet_has_several_pages()
    {
        var address =
            Environment.GetEnvironmentVariable("SHOP_PLANNER_ADDRESS")
            ?? throw new InvalidOperationException("SHOP_PLANNER_ADDRESS is not set: write like http://127.0.0.1:5080");
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = BrowserFixture.Chromium, Args = ["--no-sandbox", "--disable-gpu"] }
        );
        var page = await browser.NewPageAsync(new() { BaseURL = address });
        await page.GotoAsync("/plans/new");
        await Expect(page.Locator("fieldset.until-live:not([disabled])").First).ToBeAttachedAsync(new() { Timeout = 60_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the cuts" }).ClickAsync();
        await page.ArriveAsync(PlanAddress(), 60_000);
        var packet = await page.APIRequest.GetAsync(page.Url + "/packet.pdf");
        Assert.Equal(200, packet.Status);
        AssertSeveralPages(await packet.BodyAsync());
    }

    private static void AssertSeveralPages(byte[] packet)
    {
        var text = Encoding.Latin1.GetString(packet);
        Assert.StartsWith("%PDF-", text, StringComparison.Ordinal);
        var pages = PdfPage().Count(text);
        TestContext.Current.SendDiagnosticMessage("The packet has {0} pages and {1} bytes", pages, packet.Length);
        Assert.True(pages > 1, $"The packet has {pages} page objects in {packet.Length} bytes");
    }

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex PlanAddress();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PdfPage();
}
