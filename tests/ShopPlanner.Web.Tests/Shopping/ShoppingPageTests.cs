using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Shared;
using ShopPlanner.Web.Tests.Bench;

namespace ShopPlanner.Web.Tests.Shopping;

/// <summary>The list for a phone: small, whole without script, and what its script sends.</summary>
public sealed class ShoppingPageTests : IAsyncLifetime
{
    private PlannedShop shop = null!;
    private PlainBrowser browser = null!;
    private Guid plan;

    private static CancellationToken Cancel => ShopServer.Cancel;

    private IBuyingService Buying => shop.Server.Get<IBuyingService>();

    public async ValueTask InitializeAsync()
    {
        shop = await PlannedShop.OpenAsync();
        browser = shop.Server.Browse();
        plan = await shop.PlanAsync();
    }

    public async ValueTask DisposeAsync()
    {
        browser.Dispose();
        await shop.DisposeAsync();
    }

    // Everything that is not a picture or a font, as sent without compression.
    [Fact]
    public async Task Page_styles_and_scripts_together_are_under_100_kB()
    {
        var address = Links.ShoppingList(plan);
        var sum = (await (await browser.GetAsync(address)).Content.ReadAsByteArrayAsync(Cancel)).Length;
        var page = await browser.OpenAsync(address);
        var files = page.QuerySelectorAll("link[rel=stylesheet]").Select(link => link.GetAttribute("href")!).ToList();
        files.AddRange(page.QuerySelectorAll("script[src]").Select(script => script.GetAttribute("src")!));
        files.AddRange(["scripts/shopping-box.js", "scripts/ids.js", "scripts/share.js", "kept-pages-worker.js"]);
        foreach (var file in files)
        {
            using var answer = await browser.GetAsync("/" + file.TrimStart('/'));
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{file} answered {answer.StatusCode}");
            sum += (await answer.Content.ReadAsByteArrayAsync(Cancel)).Length;
        }

        Assert.InRange(files.Count, 8, 20);
        Assert.InRange(sum, 1, 100_000);
    }

    // Pages that may be stored nowhere are not shown again by the Back button without a network.
    [Fact]
    public async Task The_browser_may_keep_the_page_and_loads_no_live_connection()
    {
        using var answer = await browser.GetAsync(Links.ShoppingList(plan));
        Assert.False(answer.Headers.CacheControl?.NoStore ?? false, $"{answer.Headers.CacheControl}");
        Assert.DoesNotContain("blazor", await answer.Content.ReadAsStringAsync(Cancel));
    }

    [Fact]
    public async Task The_list_comes_first_and_tells_what_is_to_pay()
    {
        var page = await browser.OpenAsync(Links.ShoppingList(plan));
        Assert.Equal("Boot-room bench", page.QuerySelector("h1")!.TextContent);
        Assert.Equal("$6.48", page.QuerySelector("[data-sum=left]")!.TextContent);
        Assert.Contains("1 ×", Tick(page).TextContent);
        Assert.Equal("false", Tick(page).GetAttribute("aria-pressed"));
        Assert.StartsWith("To buy: Boot-room bench\n", page.QuerySelector("pre")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_script_a_button_buys_and_takes_back()
    {
        await PressAsync("buy");
        Assert.Equal(["R1"], (await shop.StockAsync()).Where(piece => piece.Tag[0] == 'R').Select(piece => piece.Tag));
        var page = await browser.OpenAsync(Links.ShoppingList(plan));
        Assert.Equal("true", Tick(page).GetAttribute("aria-pressed"));
        await PressAsync("more");
        Assert.Equal(2, (await LineAsync()).Bought.Length);
        await PressAsync("less");
        await PressAsync("back");
        Assert.Empty((await LineAsync()).Bought);
        await PressAsync("gone");
        Assert.False((await LineAsync()).InStock);
    }

    [Fact]
    public async Task The_same_press_sent_twice_buys_once()
    {
        var form = Fields(await browser.OpenAsync(Links.ShoppingList(plan)), "more");
        for (var i = 0; i < 2; i++)
            using (var answer = await browser.PostAsync($"{Links.ShoppingList(plan)}/pressed", form))
                Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Single((await LineAsync()).Bought);
    }

    [Fact]
    public async Task Without_script_a_price_that_cannot_be_is_refused_in_words()
    {
        var page = await browser.OpenAsync(Links.ShoppingList(plan));
        var line = (await LineAsync()).Stock;
        var form = Fields(page, "price").With(($"Price {line}", "cheap"));
        using var answer = await browser.PostAsync($"{Links.ShoppingList(plan)}/pressed", form);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("‘cheap’ is not a price", (await PlainBrowser.ReadAsync(answer)).Body!.TextContent);
    }

    [Fact]
    public async Task Ticks_are_done_in_order_and_each_has_its_answer()
    {
        var stock = (await LineAsync()).Stock;
        var answer = await SendAsync(
            new
            {
                id = Guid.NewGuid(),
                kind = "buy",
                stock,
                place = 1,
                price = "7",
            },
            new
            {
                id = Guid.NewGuid(),
                kind = "buy",
                stock,
                place = 2,
                price = "",
            },
            new
            {
                id = Guid.NewGuid(),
                kind = "back",
                stock,
                place = 2,
            },
            new
            {
                id = Guid.NewGuid(),
                kind = "buy",
                stock,
                place = 1,
                price = "8",
            },
            new
            {
                id = Guid.NewGuid(),
                kind = "seen",
                stock,
                price = "x",
            },
            new
            {
                id = Guid.NewGuid(),
                kind = "fly",
                stock,
            }
        );
        var answers = answer.GetProperty("answers").EnumerateArray().ToList();
        Assert.Equal([true, true, true, false, false, false], answers.Select(one => one.GetProperty("ok").GetBoolean()));
        Assert.Contains("already paid for it", answers[3].GetProperty("say").GetString());
        Assert.Contains("is not a price", answers[4].GetProperty("say").GetString());
        Assert.Contains("load it again", answers[5].GetProperty("say").GetString());
        var state = answer.GetProperty("state");
        Assert.Equal(70_000, state.GetProperty("spent").GetInt64());
        Assert.Equal(
            "inRack",
            state.GetProperty("lines").GetProperty(stock).GetProperty("bought")[0].GetProperty("is").GetString()
        );
    }

    [Fact]
    public async Task A_tick_that_lost_its_answer_is_sent_again_and_done_once()
    {
        var stock = (await LineAsync()).Stock;
        var tick = new
        {
            id = Guid.NewGuid(),
            kind = "buy",
            stock,
            place = 1,
            price = "",
        };
        for (var i = 0; i < 3; i++)
            Assert.True((await SendAsync(tick)).GetProperty("answers")[0].GetProperty("ok").GetBoolean());
        Assert.Single((await LineAsync()).Bought);
    }

    [Fact]
    public async Task A_canceled_plan_s_ticks_come_back_with_the_reason()
    {
        var stock = (await LineAsync()).Stock;
        await shop.Server.Get<Services.Plans.IPlanService>().WithdrawAsync(plan, Cancel);
        var answer = await SendAsync(
            new
            {
                id = Guid.NewGuid(),
                kind = "buy",
                stock,
                place = 1,
            }
        );
        Assert.Contains("is canceled or replaced", answer.GetProperty("answers")[0].GetProperty("say").GetString());
        var page = await browser.OpenAsync(Links.ShoppingList(plan));
        Assert.Contains("you can only undo", page.Body!.TextContent);
    }

    [Theory]
    [InlineData("[{}]", HttpStatusCode.OK)]
    [InlineData("[", HttpStatusCode.BadRequest)]
    [InlineData("{}", HttpStatusCode.BadRequest)]
    [InlineData("[null]", HttpStatusCode.BadRequest)]
    [InlineData("[{\"kind\":\"buy\",\"stock\":null,\"price\":null}]", HttpStatusCode.OK)]
    [InlineData("[{\"place\":\"one\"}]", HttpStatusCode.BadRequest)]
    public async Task What_no_page_of_ours_sends_changes_nothing(string body, HttpStatusCode expected)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using var answer = await browser.SendFormAsync($"{Links.ShoppingList(plan)}/ticks", content);
        Assert.Equal(expected, answer.StatusCode);
        Assert.Empty((await LineAsync()).Bought);
    }

    [Fact]
    public async Task Another_page_s_ticks_are_refused()
    {
        using var client = new HttpClient(shop.Server.Handler()) { BaseAddress = new Uri("http://localhost/") };
        using var foreign = new HttpRequestMessage(HttpMethod.Post, $"{Links.ShoppingList(plan)}/ticks")
        {
            Content = JsonContent.Create(Array.Empty<object>()),
        };
        foreign.Headers.Add("Origin", "http://elsewhere.example");
        using var answer = await client.SendAsync(foreign, Cancel);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task A_supply_is_ticked_and_priced_from_the_phone()
    {
        var own = await Buying.AddSupplyAsync(shop.Project.Id, "Sandpaper", "5", "test", CommandId.New(), Cancel);
        var (project, key) = (shop.Project.Id, own.Value!.Key);
        await SendAsync(
            new
            {
                id = Guid.NewGuid(),
                kind = "supply",
                of = $"{project} {key}",
                project,
                key,
                bought = true,
            },
            new
            {
                id = Guid.NewGuid(),
                kind = "supply",
                of = $"{project} {key}",
                project,
                key,
                price = "4.50",
            }
        );
        var list = (await Buying.OfPlanAsync(plan, Cancel))!;
        Assert.Equal("4.50", $"{list.Totals.Spent}");
        var page = await browser.OpenAsync(Links.ShoppingListOf(shop.Project.Id));
        Assert.Equal("true", page.QuerySelector("li[data-supply] .shopping-tick")!.GetAttribute("aria-pressed"));
        Assert.Equal(Links.ShoppingList(plan), page.QuerySelector("form")!.GetAttribute("data-list"));
    }

    private async Task<JsonElement> SendAsync(params object[] ticks)
    {
        using var answer = await browser.SendFormAsync($"{Links.ShoppingList(plan)}/ticks", JsonContent.Create(ticks));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(Cancel);
    }

    private async Task PressAsync(string button)
    {
        var form = Fields(await browser.OpenAsync(Links.ShoppingList(plan)), button);
        using var answer = await browser.PostAsync($"{Links.ShoppingList(plan)}/pressed", form);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal(Links.ShoppingList(plan), answer.Headers.Location!.OriginalString);
    }

    private async Task<StockLine> LineAsync() => (await Buying.OfPlanAsync(plan, Cancel))!.Lines.Single();

    private static IElement Tick(IHtmlDocument page) => page.QuerySelector("li[data-line] .shopping-tick")!;

    private static List<KeyValuePair<string, string>> Fields(IHtmlDocument page, string button)
    {
        var form = page.QuerySelector<IHtmlFormElement>("form#list")!;
        var pressed = form.QuerySelector<IHtmlButtonElement>($"button[data-verb={button}]")!;
        return [.. PlainBrowser.FieldsOf(form), KeyValuePair.Create("Do", pressed.Value)];
    }
}
