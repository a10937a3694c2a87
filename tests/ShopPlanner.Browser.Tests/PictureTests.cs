using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// Pictures of every place, on every screen, light and dark, into the folder named by SHOP_PLANNER_PICTURES:
/// the whole page, and what the screen shows of it (top-…). Not part of the
/// tests: run by tests/pictures.sh.
/// </summary>
public sealed partial class PictureTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static readonly string Folder =
        Environment.GetEnvironmentVariable("SHOP_PLANNER_PICTURES") ?? Path.Combine(AppContext.BaseDirectory, "pictures");

    // Only places whose name begins so, where some are looked at again and again.
    private static readonly string? Wanted = Environment.GetEnvironmentVariable("SHOP_PLANNER_PLACES");

    [Fact(Explicit = true)]
    public async Task Take()
    {
        var places = await PlacesAsync();
        foreach (var screen in Screen.All)
        foreach (var dark in new[] { false, true })
            await TakeAsync(screen, dark, places);
    }

    private async Task TakeAsync(Screen screen, bool dark, IReadOnlyDictionary<string, string> places)
    {
        var page = await browser.OpenAsync(screen, dark);
        foreach (
            var (name, address) in places.Where(place => Wanted is null || place.Key.StartsWith(Wanted, StringComparison.Ordinal))
        )
        {
            await page.GotoAsync(address, new() { WaitUntil = WaitUntilState.NetworkIdle });
            var file = $"{name}-{screen.Name}-{(dark ? "dark" : "light")}.png";
            await page.ScreenshotAsync(new() { Path = Path.Combine(Folder, "top-" + file) });
            await page.ScreenshotAsync(new() { Path = Path.Combine(Folder, file), FullPage = true });
        }

        await page.Context.CloseAsync();
    }

    private async Task<IReadOnlyDictionary<string, string>> PlacesAsync()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var piece = await PieceAsync(page);
        await page.GotoAsync("/plans/new");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the cuts" }).ClickAsync();
        await page.ArriveAsync(PlanAddress(), 60_000);
        var plan = new Uri(page.Url).AbsolutePath;
        var bench = $"{plan.Replace("/plans/", "/bench/", StringComparison.Ordinal)}/{await FullestAsync(page)}";
        var project = await FirstAsync(page, "/projects", "a[href*='/parts']");
        var store = await FirstAsync(page, "/stores", "main a[href^='/stores/']");
        var idea = await IdeaAsync(page);
        return new Dictionary<string, string>
        {
            ["home"] = "/",
            ["projects"] = "/projects",
            ["parts"] = project,
            ["search"] = "/search?q=pine%201x4",
            ["trash"] = "/projects/trash",
            ["project-buy"] = project.Replace("/parts", "/buy", StringComparison.Ordinal),
            ["project-cuts"] = project.Replace("/parts", "/cuts", StringComparison.Ordinal),
            ["welcome-units"] = "/welcome/units",
            ["welcome-saws"] = "/welcome/saws",
            ["welcome-store"] = "/welcome/store",
            ["welcome-offcuts"] = "/welcome/offcuts",
            ["welcome-start"] = "/welcome/start",
            ["stock"] = "/rack-and-bin",
            ["piece"] = piece,
            ["stores"] = "/stores",
            ["store"] = store,
            ["plans"] = "/plans",
            ["order"] = "/plans/new",
            ["order-again"] = plan.Replace("/plans/", "/plans/new?replaces=", StringComparison.Ordinal),
            ["cuts"] = plan,
            ["cuts-by-setting"] = plan + "?by=setting",
            ["buy"] = plan + "/buy",
            ["shopping"] = plan.Replace("/plans/", "/shopping/", StringComparison.Ordinal),
            ["placed"] = plan + "/parts",
            ["bench-list"] = "/bench",
            ["bench"] = bench,
            ["bench-settings"] = bench[..bench.LastIndexOf('/')] + "/settings",
            ["finish"] = bench + "/finish?all-made=true",
            ["shop"] = "/shop",
            ["workings"] = "/workings",
            ["working-feet"] = "/workings/board-feet?thickness=1&width=5%201%2F2&length=8%20ft&count=12&unit=in",
            ["working-spacing"] = "/workings/spacing?span=32%201%2F2&member=2%201%2F2&count=7&unit=in",
            ["designs"] = "/designs",
            ["idea"] = idea,
            ["idea-part"] = idea + "?part=A&view=front",
            ["idea-exploded"] = idea + "?view=exploded",
            ["idea-turn"] = idea + "?view=turn",
            ["project-build"] = idea.Replace("/idea", "/build", StringComparison.Ordinal),
            ["project-finish"] = idea.Replace("/idea", "/finish", StringComparison.Ordinal),
            ["working-stability"] = "/workings/stability?depth=12&height=34%201%2F2&weight=60%20lb&unit=in",
        }
            .Concat(WorkingPictures.All)
            .Concat(WorkingPictures.From(idea))
            .ToDictionary();
    }

    // A board with a knot and a bad end: the plan's layouts keep off them.
    private static async Task<string> PieceAsync(IPage page)
    {
        var piece = await FirstAsync(page, "/rack-and-bin?place=rack", "main a.tag");
        await page.GotoAsync(piece, new() { WaitUntil = WaitUntilState.NetworkIdle });
        await BadPlaces.AddAsync(page, "spot", "3", "1", "40", "1");
        await BadPlaces.AddAsync(page, "end-right", "5 1/2");
        return piece;
    }

    // The number of the board or sheet with the most cuts: it shows the most.
    private static async Task<int> FullestAsync(IPage page)
    {
        await page.Locator(".layout").First.WaitForAsync();
        return await page.EvaluateAsync<int>(
            """
            () => {
              const cuts = layout => layout.querySelectorAll(".cut-list li").length;
              const fullest = [...document.querySelectorAll(".layout")].reduce((a, b) => cuts(b) > cuts(a) ? b : a);
              return parseInt(fullest.querySelector("h2").textContent.match(/\d+/)[0]);
            }
            """
        );
    }

    private static async Task<string> IdeaAsync(IPage page)
    {
        await page.GotoAsync("/designs", new() { WaitUntil = WaitUntilState.NetworkIdle });
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a project from this: Pantry cupboard" }).ClickAsync();
        await page.ArriveAsync(IdeaAddress());
        return new Uri(page.Url).AbsolutePath;
    }

    private static async Task<string> FirstAsync(IPage page, string address, string selector)
    {
        await page.GotoAsync(address, new() { WaitUntil = WaitUntilState.NetworkIdle });
        return (await page.Locator(selector).First.GetAttributeAsync("href"))!;
    }

    [GeneratedRegex("/projects/[0-9a-f-]{36}/idea$")]
    private static partial Regex IdeaAddress();

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex PlanAddress();
}
