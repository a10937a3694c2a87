using AngleSharp.Dom;
using Bunit;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stores;
using ShopPlanner.Web.Features.Stores;
using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Tests.Stores;

/// <summary>A line of a price list is saved whole.</summary>
public sealed class PriceLineTests : IAsyncLifetime
{
    private static long seq;

    private PlannedShop shop = default!;
    private BunitContext context = default!;
    private IRenderedComponent<StorePage> page = default!;

    public async ValueTask InitializeAsync()
    {
        shop = await PlannedShop.OpenAsync();
        context = PageTest.For(shop);
        page = context.Render<StorePage>(given => given.Add(one => one.Id, shop.Store.Id));
        page.WaitForElement("h1");
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await shop.DisposeAsync();
    }

    [Fact]
    public async Task Both_cells_of_a_line_are_stored_in_one_step()
    {
        var before = (await PricesAsync()).Single();
        await LeaveAsync(("length", "120"), ("price", "9.50"));
        var now = (await PricesAsync()).Single();
        Assert.Equal(("120", "9.50", before.Version + 1), (Inches(now), now.Price.ToString(), now.Version));
    }

    [Fact]
    public async Task A_wrong_cell_holds_the_whole_line_back_and_the_mended_line_is_stored()
    {
        var before = (await PricesAsync()).Single();
        await LeaveAsync(("length", "120"), ("price", "a lot"));
        Assert.Equal(before, (await PricesAsync()).Single());
        Assert.Equal(("120", "a lot"), (Cell("length").GetAttribute("data-shown"), Cell("price").GetAttribute("data-shown")));
        await LeaveAsync(("price", "9.50"));
        var now = (await PricesAsync()).Single();
        Assert.Equal(("120", "9.50"), (Inches(now), now.Price.ToString()));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".fault")));
    }

    [Fact]
    public async Task A_refused_new_line_is_not_stored_while_it_is_corrected()
    {
        await New("material").TypedAsync("pine-1x4");
        await New("length").TypedAsync("96");
        await New("price").TypedAsync("1,5O");
        await Add().PressAsync();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".fault")));
        await New("price").TypedAsync("1");
        await New("length").TypedAsync("120");
        Assert.Single(await PricesAsync());
        await Add().PressAsync();
        Assert.Equal(["6.48", "1.00"], (await PricesAsync()).Select(price => price.Price.ToString()));
    }

    [Fact]
    public async Task What_another_device_changed_is_shown_beside_what_was_typed_and_either_can_be_had()
    {
        var row = (await PricesAsync()).Single();
        await LeaveAsync(("price", "7"));
        var stores = shop.Server.Get<IStoreService>();
        var theirs = new PriceEdit(row.Id, row.MaterialId, "96", "", "8", true, row.Version + 1);
        Assert.True((await stores.SavePriceAsync(shop.Store.Id, theirs, CommandId.New(), ShopServer.Cancel)).Ok);
        await LeaveAsync(("length", "120"), ("price", "9"));
        page.WaitForAssertion(() =>
            Assert.Contains("Another device changed this to ‘8.00’", page.Markup, StringComparison.Ordinal)
        );
        await page.InvokeAsync(() => page.FindAll("button").Single(one => one.TextContent == "Keep ‘9’").ClickAsync(new()));
        var now = (await PricesAsync()).Single();
        Assert.Equal(("120", "9.00"), (Inches(now), now.Price.ToString()));
    }

    // As fields.js does when a line is left: every changed cell, the last one marked as the last.
    private async Task LeaveAsync(params (string Field, string Text)[] cells)
    {
        var sent = new List<Task>();
        foreach (var (field, text) in cells)
            sent.Add(
                Cell(field)
                    .TriggerEventAsync(
                        "ontyped",
                        new TypedEventArgs
                        {
                            Value = text,
                            Base = Cell(field).GetAttribute("data-kept")!,
                            Seq = Interlocked.Increment(ref seq) + 1_000_000,
                            More = field != cells[^1].Field,
                        }
                    )
            );
        await Task.WhenAll(sent);
    }

    private IElement Cell(string field) => page.Find($"tr[data-whole-line] [data-field='{field}']");

    private IElement New(string field) => page.Find($"tr[data-form^='new-price'] [data-field='{field}']");

    private IElement Add() => page.Find("tr[data-form^='new-price'] [data-command]");

    private static string Inches(PriceRow row) => LengthFormat.Exact(row.Length, LengthUnit.Inch);

    private async Task<IEnumerable<PriceRow>> PricesAsync() =>
        (await shop.Server.Get<IStoreService>().GetAsync(shop.Store.Id, ShopServer.Cancel))!.Prices;
}
