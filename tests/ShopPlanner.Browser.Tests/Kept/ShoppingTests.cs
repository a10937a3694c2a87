using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>The shopping list on a phone in a store without a network, and on two devices at once.</summary>
public sealed class ShoppingTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    private const int Instant = 50,
        Thumb = 48;

    private static readonly LocatorAssertionsToHaveTextOptions Patient = new() { Timeout = 60_000 };

    [Fact]
    public async Task The_list_is_the_first_thing_on_a_phone_and_its_boxes_are_for_a_thumb()
    {
        var page = await OpenAsync();
        var box = (await page.Locator(".shopping-tick .box").First.BoundingBoxAsync())!;
        Assert.InRange(box.Width, Thumb, Thumb * 2);
        Assert.InRange(box.Height, Thumb, Thumb * 2);
        Assert.InRange(box.Y, 0, Screen.Phone.Height / 3);
        Assert.Equal(Screen.Phone.Width, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Ticks_without_a_network_are_drawn_at_once_kept_and_sent_when_it_is_back()
    {
        var page = await OpenAsync();
        await ClearAsync(page);
        var rack = await RackAsync();
        kept.Line.Drop();
        var took = await page.EvaluateAsync<double>(
            """
            () => {
              const tick = document.querySelector("li[data-line] .shopping-tick"), begun = performance.now();
              tick.click();
              if (tick.getAttribute("aria-pressed") !== "true") throw new Error("the tick is not drawn");
              return performance.now() - begun;
            }
            """
        );
        Assert.InRange(took, 0, Instant);
        await Expect(State(page)).ToHaveTextAsync(KeptHere());
        Assert.Equal(rack, await RackAsync());
        kept.Line.Restore();
        await Expect(State(page)).ToHaveTextAsync("Saved", Patient);
        await Expect(Tick(page)).ToHaveAttributeAsync("aria-pressed", "true");
        Assert.Equal(rack + await AskedAsync(page), await RackAsync());
        await ClearAsync(page);
        Assert.Equal(rack, await RackAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Reloaded_without_a_network_the_list_and_its_ticks_are_there()
    {
        var page = await OpenAsync();
        await ClearAsync(page);
        await Expect(page.Locator("[data-offline]")).ToContainTextAsync("opens again on this device");
        await page.WaitForFunctionAsync(
            """
            async () => {
              const cache = await caches.open("shop-planner pages"), addresses = (await cache.keys()).map(one => one.url);
              return navigator.serviceWorker.controller && addresses.includes(location.href)
                && addresses.some(one => one.includes("shopping-box"));
            }
            """
        );
        kept.Line.Drop();
        await Tick(page).ClickAsync();
        await Expect(State(page)).ToHaveTextAsync(KeptHere());
        await page.ReloadAsync();
        await Expect(Tick(page)).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(State(page)).ToHaveTextAsync(KeptHere());
        kept.Line.Restore();
        await Expect(State(page)).ToHaveTextAsync("Saved", Patient);
        await ClearAsync(page);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_program_that_was_killed_gets_the_ticks_when_it_runs_again()
    {
        var page = await OpenAsync();
        await ClearAsync(page);
        var rack = await RackAsync();
        await kept.App.KillAsync();
        await Tick(page).ClickAsync();
        await Expect(State(page)).ToHaveTextAsync(KeptHere());
        await kept.RestartAsync();
        await Expect(State(page)).ToHaveTextAsync("Saved", Patient);
        Assert.Equal(rack + await AskedAsync(page), await RackAsync());
        await ClearAsync(page);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Two_devices_that_tick_the_same_list_buy_each_board_once_and_end_alike()
    {
        var (one, other) = (await OpenAsync(), await OpenElsewhereAsync());
        await ClearAsync(one);
        await other.ReloadAsync();
        var (rack, asked) = (await RackAsync(), await AskedAsync(one));
        kept.Line.Drop();
        await Tick(one).ClickAsync();
        await Tick(other).ClickAsync();
        await More(other).ClickAsync();
        await Expect(State(other)).ToHaveTextAsync("Saved", Patient);
        kept.Line.Restore();
        await Expect(State(one)).ToHaveTextAsync("Saved", Patient);
        Assert.Equal(rack + asked + 1, await RackAsync());
        await Expect(Count(one)).ToHaveTextAsync(await Count(other).InnerTextAsync());
        var sums = await one.Locator("[data-sum=spent]").InnerTextAsync();
        await Expect(other.Locator("[data-sum=spent]")).ToHaveTextAsync(sums);
        await ClearAsync(one);
        Assert.Equal(rack, await RackAsync());
        await one.Context.CloseAsync();
        await other.Context.CloseAsync();
    }

    [Fact]
    public async Task A_tick_that_is_refused_says_why_at_its_line_and_goes_back()
    {
        var (one, other) = (await OpenAsync(), await OpenElsewhereAsync());
        await ClearAsync(one);
        await other.ReloadAsync();
        kept.Line.Drop();
        await Tick(one).ClickAsync();
        await other.Locator("li[data-line] summary").First.ClickAsync();
        await other.Locator("li[data-line] input").First.FillAsync("99.25");
        await other.Locator("li[data-line] input").First.PressAsync("Enter");
        await Tick(other).ClickAsync();
        await Expect(State(other)).ToHaveTextAsync("Saved", Patient);
        // The plan's own price is no price that was typed: what the other device paid stays, and nothing is bought twice.
        kept.Line.Restore();
        await Expect(State(one)).ToHaveTextAsync("Saved", Patient);
        kept.Line.Drop();
        await one.Locator("li[data-line] summary").First.ClickAsync();
        await one.Locator("li[data-line] input").First.FillAsync("cheap");
        await one.Locator("li[data-line] input").First.PressAsync("Enter");
        await Expect(State(one)).ToHaveTextAsync(KeptHere());
        kept.Line.Restore();
        await Expect(one.Locator("li[data-line] [data-fault]").First).ToContainTextAsync("‘cheap’ is not a price");
        await Expect(State(one)).ToHaveTextAsync("Saved", Patient);
        await Expect(one.Locator("li[data-line] summary").First).ToContainTextAsync("99.25");
        await ClearAsync(one);
        await one.Context.CloseAsync();
        await other.Context.CloseAsync();
    }

    // Takes back what an earlier test, or a line of the demo, has bought.
    private static async Task ClearAsync(IPage page)
    {
        await Expect(State(page)).ToHaveTextAsync("Saved", Patient);
        var less = page.Locator("li[data-line]").First.GetByRole(AriaRole.Button, new() { Name = "One less" });
        for (var before = ""; before != await Count(page).InnerTextAsync(); )
        {
            before = await Count(page).InnerTextAsync();
            await less.ClickAsync();
            await Expect(State(page)).ToHaveTextAsync("Saved", Patient);
        }
    }

    private Task<IPage> OpenAsync() => OpenListAsync(kept.OpenAsync(Screen.Phone));

    private Task<IPage> OpenElsewhereAsync() => OpenListAsync(kept.OpenElsewhereAsync());

    // The page asks the server as soon as it is there: it can be used then.
    private static async Task<IPage> OpenListAsync(Task<IPage> opening)
    {
        var page = await opening;
        await page.GotoAsync(await Places.AddressAsync(page, "shopping"));
        await Expect(State(page)).ToHaveTextAsync("Saved", Patient);
        return page;
    }

    // How many pieces lie in the rack, as another device sees it.
    private async Task<int> RackAsync()
    {
        var page = await kept.OpenElsewhereAsync();
        await page.GotoAsync("/rack-and-bin?place=rack");
        await Fields.SettledAsync(page);
        var number = await page.Locator(".stock-table tbody tr").CountAsync();
        await page.Context.CloseAsync();
        return number;
    }

    // Of those that the first line asks for, the ones that are not cut up already.
    private static async Task<int> AskedAsync(IPage page) =>
        await page.EvaluateAsync<int>(
            """
            () => {
              const stock = document.querySelector("li[data-line]").dataset.line;
              return JSON.parse(document.getElementById("list-state").textContent).lines[stock].needed;
            }
            """
        );

    private static ILocator Tick(IPage page) => page.Locator("li[data-line] .shopping-tick").First;

    private static ILocator More(IPage page) =>
        page.Locator("li[data-line]").First.GetByRole(AriaRole.Button, new() { Name = "One more" });

    private static ILocator Count(IPage page) => page.Locator("li[data-line] [data-count]").First;

    private static ILocator State(IPage page) => page.Locator("[data-state]");

    private static System.Text.RegularExpressions.Regex KeptHere() => new("^[0-9]+ changes? kept on this phone, not sent yet$");
}
