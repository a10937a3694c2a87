using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Ahead;
using ShopPlanner.Services.Demo;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Setup;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Features.Home;
using ShopPlanner.Web.Features.Welcome;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Welcome;

/// <summary>The first setup: a card at a time, each stored as it is left, and begun again where it was broken off.</summary>
public sealed class WelcomePageTests : IAsyncLifetime
{
    private ShopServer server = null!;
    private BunitContext context = null!;

    public async ValueTask InitializeAsync()
    {
        server = await ShopServer.OpenAsync();
        context = new BunitContext();
        context.JSInterop.Mode = JSRuntimeMode.Loose;
        context.Services.AddMudServices();
        context.Services.AddScoped<Notices>();
        Share<IconShelf>();
        Share<IShopService>();
        Share<ISetupService>();
        Share<IStoreService>();
        Share<IStockService>();
        Share<IProjectService>();
        Share<IPlanService>();
        Share<IDemoService>();
        Share<IAheadService>();
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await server.DisposeAsync();
    }

    [Fact]
    public async Task An_empty_shop_offers_the_setup_the_designs_and_the_demo()
    {
        var home = context.Render<HomePage>();
        Assert.Equal(Links.Welcome(), home.Find("a.first").GetAttribute("href"));
        Assert.Contains(home.FindAll("a"), link => link.GetAttribute("href") == Links.Designs);
        await home.Find("button[data-command='load-demo']").PressAsync();
        Assert.Equal(4, (await server.Get<IProjectService>().ListAsync(cancel: ShopServer.Cancel)).Count);
        Assert.DoesNotContain("Load the demo", home.Markup, StringComparison.Ordinal);
        Assert.Contains("Keep cutting", home.Markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "Units and currency")]
    [InlineData(1, "Saws and car")]
    [InlineData(2, "Your store")]
    [InlineData(3, "Offcuts you have")]
    [InlineData(4, "Ready to build")]
    public async Task Broken_off_at_a_card_it_goes_on_there(int cards, string heading)
    {
        for (var card = 0; card < cards; card++)
            await Button(Card(), "Next", "Skip for now").ClickAsync(new());
        Assert.Equal(heading, Card().Find("h1").TextContent);
        Assert.Equal(cards, (await SettingsAsync()).SetupCards);
        var home = context.Render<HomePage>();
        Assert.Equal(cards is > 0 and < 4, home.Markup.Contains("Continue setup", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_is_typed_on_a_card_is_stored_before_the_next_one()
    {
        await Field(Card("units"), "Unit").TypedAsync("Millimetre");
        await Field(Card("units"), "Currency sign").TypedAsync("€");
        var saws = Card("saws");
        await Field(saws, "miter saw").TypedAsync("true");
        await Field(saws, "Miter saw: widest board").TypedAsync("305");
        await Field(saws, "Car: longest piece").TypedAsync("1800");
        var settings = await SettingsAsync();
        Assert.Equal(
            (LengthUnit.Millimetre, "€", true, "305", "1800"),
            (settings.Unit, settings.CurrencySign, settings.HasMiterSaw, settings.MiterCrosscut, settings.CarryLongest)
        );
        Assert.Equal(0, settings.SetupCards);
    }

    [Fact]
    public async Task A_card_with_a_size_that_cannot_be_read_is_not_left()
    {
        var saws = Card("saws");
        await Field(saws, "Table saw: widest rip").TypedAsync("wide");
        await Button(saws, "Next").ClickAsync(new());
        Assert.Contains("cannot be read", saws.Find(".faults").TextContent, StringComparison.Ordinal);
        Assert.Equal(0, (await SettingsAsync()).SetupCards);
        await Field(saws, "Table saw: widest rip").TypedAsync("24");
        await Button(saws, "Next").ClickAsync(new());
        Assert.Equal((2, "24"), ((await SettingsAsync()).SetupCards, (await SettingsAsync()).WidestRip));
    }

    [Fact]
    public async Task Prices_make_a_store_and_blank_ones_are_left_out()
    {
        var card = Card("store");
        await Field(card, "Store name").TypedAsync("Corner lumber");
        await Field(card, "Pine 1x4, 8 ft").TypedAsync("6.20");
        await Field(card, "Birch plywood 3/4 in, 4 × 8 ft").TypedAsync("58");
        await Button(card, "Save prices").PressAsync();
        var store = Assert.Single(await server.Get<IStoreService>().ListAsync(ShopServer.Cancel));
        Assert.Equal(["birch-ply-3-4", "pine-1x4"], store.Prices.Select(price => price.MaterialId).Order());
        Assert.Equal(Length.FromFeet(8), store.Prices.Single(price => price.MaterialId == "pine-1x4").Length);
        Assert.Equal(3, (await SettingsAsync()).SetupCards);
    }

    [Fact]
    public async Task A_wrong_price_is_named_by_its_size_and_nothing_is_saved()
    {
        var card = Card("store");
        await Field(card, "Store name").TypedAsync("Corner lumber");
        await Field(card, "Pine 1x4, 8 ft").TypedAsync("cheap");
        await Button(card, "Save prices").PressAsync();
        Assert.Contains("Pine 1x4, 8 ft: ‘cheap’", card.Find(".faults").TextContent, StringComparison.Ordinal);
        Assert.Equal("true", Field(card, "Pine 1x4, 8 ft").GetAttribute("aria-invalid"));
        Assert.Empty(await server.Get<IStoreService>().ListAsync(ShopServer.Cancel));
        Assert.Equal(0, (await SettingsAsync()).SetupCards);
    }

    [Fact]
    public async Task Offcuts_go_in_the_bin_line_by_line()
    {
        var card = Card("offcuts");
        await Field(card, "Offcuts").TypedAsync("1x4 pine 33 1/2\nnothing known 5");
        await Button(card, "Put in the bin").PressAsync();
        Assert.Contains("Line 2", card.Find(".faults").TextContent, StringComparison.Ordinal);
        await Field(card, "Offcuts").TypedAsync("1x4 pine 33 1/2\nbirch plywood 3/4 30 x 20");
        await Button(card, "Put in the bin").PressAsync();
        Assert.Equal(2, (await server.Get<IStockService>().ListAsync(ShopServer.Cancel)).Count);
        Assert.Equal(4, (await SettingsAsync()).SetupCards);
    }

    [Fact]
    public void Every_usual_size_has_a_name_of_its_own_and_a_material_that_is_known()
    {
        var sizes = UsualStock.Groups.SelectMany(group => group.Materials).SelectMany(one => one.Sizes).ToList();
        Assert.Equal(sizes.Select(size => size.Name).Distinct(), sizes.Select(size => size.Name));
        Assert.All(UsualStock.Groups, group => Assert.All(group.Materials, one => Assert.NotEmpty(one.Sizes)));
        Assert.Equal(
            Core.Materials.MaterialCatalogue.StoreMaterials.Select(one => one.Id).Order(),
            UsualStock.Groups.SelectMany(group => group.Materials).Select(one => one.Material.Id).Order()
        );
    }

    private void Share<T>()
        where T : class => context.Services.AddSingleton(server.Get<T>());

    private Task<ShopSettings> SettingsAsync() => server.Get<IShopService>().GetAsync(ShopServer.Cancel);

    private IRenderedComponent<WelcomePage> Card(string? key = null) =>
        context.Render<WelcomePage>(parameters =>
            parameters.Add(page => page.Card, key).AddCascadingValue(new Visitor("test tablet", null))
        );

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<WelcomePage> page, string name) =>
        page.Find($"[data-field='{name}']");

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<WelcomePage> page, params string[] names) =>
        page.FindAll("button").Single(button => names.Contains(button.TextContent.Trim()));
}
