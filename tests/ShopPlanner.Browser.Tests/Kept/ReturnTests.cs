using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>A page comes back by itself, also when the line fails in the moment in which it is opened.</summary>
public sealed class ReturnTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    [Fact]
    public async Task A_page_whose_first_connection_is_refused_becomes_live()
    {
        var page = await kept.OpenAsync();
        var refused = await RefuseAsync(page, "/_blazor/negotiate", 3);
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        Assert.Equal(3, refused.Count);
    }

    [Fact]
    public async Task A_page_whose_first_connection_breaks_becomes_live()
    {
        var page = await kept.OpenAsync();
        var broken = 0;
        await page.RouteWebSocketAsync(
            url => url.Contains("/_blazor", StringComparison.Ordinal),
            socket =>
            {
                if (Interlocked.Increment(ref broken) > 2)
                    socket.ConnectToServer();
                else
                    BreakAfterHandshake(socket);
            }
        );
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        Assert.True(broken > 2);
    }

    [Fact]
    public async Task A_link_followed_without_a_line_leads_there_when_it_stands_again()
    {
        var page = await kept.OpenAsync();
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        kept.Line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        var kerf = page.GetByLabel("Table saw: kerf", new() { Exact = true });
        await kerf.FillAsync("9/64");
        await kerf.PressAsync("Tab");
        await page.Locator("nav a[href='/stores']").ClickAsync();
        kept.Line.Restore();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Stores", Level = 1 })).ToBeVisibleAsync();
        await page.Locator("nav a[href='/shop']").ClickAsync();
        await Expect(kerf).ToHaveValueAsync("9/64");
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task A_page_opened_in_the_moment_of_an_outage_says_so_and_becomes_live()
    {
        var page = await kept.OpenAsync();
        await page.RouteAsync(
            url => url.Contains("/_blazor/negotiate", StringComparison.Ordinal),
            async route =>
            {
                kept.Line.Drop();
                await route.AbortAsync();
            }
        );
        await page.GotoAsync("/shop");
        await Expect(page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await page.UnrouteAllAsync();
        kept.Line.Restore();
        await Fields.SettledAsync(page);
        await Expect(page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task A_page_that_the_server_forgot_waits_for_an_answer_before_it_opens_anew()
    {
        var page = await kept.OpenAsync();
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        await kept.App.KillAsync();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        var field = page.GetByLabel("Squaring a board's end", new() { Exact = true });
        await field.FillAsync("3/8");
        await field.PressAsync("Tab");
        var refused = await RefuseAsync(page, "/shop", 2);
        await kept.RestartAsync();
        await page.WaitForFunctionAsync("() => document.body.dataset.line !== 'down'", null, new() { Timeout = 60_000 });
        await Fields.SettledAsync(page);
        await Expect(field).ToHaveValueAsync("3/8");
        Assert.Equal(2, refused.Count);
    }

    // The greeting passes; the page's own first message finds the line broken.
    private static void BreakAfterHandshake(IWebSocketRoute socket)
    {
        var server = socket.ConnectToServer();
        var sent = 0;
        socket.OnMessage(message =>
        {
            if (++sent > 1)
                _ = socket.CloseAsync();
            else if (message.Text is { } text)
                server.Send(text);
            else
                server.Send(message.Binary!);
        });
    }

    // Refuses the first requests whose address ends so.
    private static async Task<List<string>> RefuseAsync(IPage page, string end, int times)
    {
        var refused = new List<string>();
        await page.RouteAsync(
            url => new Uri(url).AbsolutePath.EndsWith(end, StringComparison.Ordinal),
            async route =>
            {
                if (refused.Count >= times)
                {
                    await route.ContinueAsync();
                    return;
                }

                refused.Add(route.Request.Url);
                await route.AbortAsync();
            }
        );
        return refused;
    }
}
