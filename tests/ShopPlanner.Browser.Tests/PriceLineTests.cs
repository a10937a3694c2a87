using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>A line of a price list is saved when it is left or Enter is pressed, whole.</summary>
public sealed class PriceLineTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    private static readonly LocatorAssertionsToHaveTextOptions Soon = new() { Timeout = 20_000 };

    [Fact]
    public async Task A_line_is_saved_when_it_is_left_and_not_before()
    {
        var page = await OpenAsync("Left Lumber");
        await AddAsync(page, "Pine 1x4", "8 ft", "7.25");
        await page.GetByLabel("Length, Pine 1x4 96").FillAsync("10 ft");
        await page.GetByLabel("Price, Pine 1x4 96").FillAsync("9.10");
        await SavesNothingAsync(page);
        await page.GetByLabel("Material, new price").FocusAsync();
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved", Soon);
        await Expect(page.GetByLabel("Price, Pine 1x4 120")).ToHaveValueAsync("9.10");
        await HoldsAsync(page, ("Pine 1x4 120", "9.10"));
    }

    [Fact]
    public async Task Enter_saves_a_line_that_has_the_cursor()
    {
        var page = await OpenAsync("Enter Lumber");
        await AddAsync(page, "Pine 1x4", "8 ft", "7.25");
        await page.GetByLabel("Price, Pine 1x4 96").FillAsync("8.40");
        await page.GetByLabel("Price, Pine 1x4 96").PressAsync("Enter");
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved", Soon);
        await Expect(page.GetByLabel("Price, Pine 1x4 96")).ToBeFocusedAsync();
        await HoldsAsync(page, ("Pine 1x4 96", "8.40"));
    }

    [Fact]
    public async Task A_tick_alone_is_saved_at_once()
    {
        var page = await OpenAsync("Tick Lumber");
        await AddAsync(page, "Pine 1x4", "8 ft", "7.25");
        await page.GetByLabel("In stock, Pine 1x4 96").UncheckAsync();
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved", Soon);
        await page.ReloadAsync();
        await Fields.SettledAsync(page);
        await Expect(page.GetByLabel("In stock, Pine 1x4 96")).Not.ToBeCheckedAsync();
    }

    [Fact]
    public async Task A_new_line_is_added_when_it_is_left()
    {
        var page = await OpenAsync("New Lumber");
        await page.GetByLabel("Material, new price").FillAsync("1x6 pine");
        await page.GetByLabel("Length, new price").FillAsync("8 ft");
        await page.GetByLabel("Price, new price").FillAsync("11");
        await page.GetByRole(AriaRole.Button, new() { Name = "Edit store" }).FocusAsync();
        await Expect(page.GetByLabel("Price, Pine 1x6 96")).ToHaveValueAsync("11.00");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Edit store" })).ToBeFocusedAsync();
        await HoldsAsync(page, ("Pine 1x6 96", "11.00"));
    }

    // Refused for its price, the line is corrected from the length on: the price that was wrong in the end must not be stored.
    [Fact]
    public async Task A_refused_new_line_is_saved_when_its_correction_is_whole()
    {
        var page = await OpenAsync("Refused Lumber");
        await page.GetByLabel("Material, new price").FillAsync("Pine 1x6");
        await page.GetByLabel("Length, new price").FillAsync("eight");
        await page.GetByLabel("Price, new price").FillAsync("11");
        await page.GetByLabel("Price, new price").PressAsync("Enter");
        await Expect(page.Locator(".price-table .fault")).ToBeVisibleAsync();
        await page.GetByLabel("Length, new price").FillAsync("8 ft");
        await page.GetByLabel("Price, new price").FillAsync("12.50");
        await SavesNothingAsync(page);
        await Expect(page.Locator(".price-table tr[data-whole-line]")).ToHaveCountAsync(0);
        await page.GetByLabel("Price, new price").PressAsync("Enter");
        await Expect(page.GetByLabel("Price, Pine 1x6 96")).ToHaveValueAsync("12.50");
        await HoldsAsync(page, ("Pine 1x6 96", "12.50"));
    }

    // What several may be is offered; what is nowhere can be added without leaving.
    [Fact]
    public async Task A_material_is_chosen_or_added_from_where_one_stands()
    {
        var page = await OpenAsync("Offer Lumber");
        await page.GetByLabel("Material, new price").FillAsync("2x4");
        await page.GetByLabel("Length, new price").FillAsync("8 ft");
        await page.GetByLabel("Price, new price").FillAsync("4.18");
        await page.GetByLabel("Price, new price").PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Douglas-fir 2x4", Exact = true }).ClickAsync();
        await Expect(page.GetByLabel("Material, new price")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByLabel("Price, Douglas-fir 2x4 96")).ToHaveValueAsync("4.18");

        await page.GetByLabel("Material, new price").FillAsync("Walnut 1x7");
        await page.GetByLabel("Length, new price").FillAsync("6 ft");
        await page.GetByLabel("Price, new price").FillAsync("31");
        await page.GetByLabel("Price, new price").PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add ‘Walnut 1x7’ to your materials" }).ClickAsync();
        var form = page.GetByRole(AriaRole.Form, new() { Name = "Add a material" });
        await Expect(form.GetByLabel("Name", new() { Exact = true })).ToHaveValueAsync("Walnut 1x7");
        await form.GetByLabel("Thickness", new() { Exact = true }).FillAsync("3/4");
        await form.GetByLabel("Width", new() { Exact = true }).FillAsync("6 1/2");
        await form.GetByRole(AriaRole.Button, new() { Name = "Add material" }).ClickAsync();
        await Expect(form).ToHaveCountAsync(0);
        await page.GetByLabel("Price, new price").PressAsync("Enter");
        await Expect(page.GetByLabel("Price, Walnut 1x7 72")).ToHaveValueAsync("31.00");
    }

    private static async Task SavesNothingAsync(IPage page)
    {
        await page.WaitForTimeoutAsync(1_000);
        await Expect(page.Locator("[data-save-state]")).Not.ToHaveTextAsync("Saving…");
    }

    // A page opened anew shows what is stored.
    private static async Task HoldsAsync(IPage page, params (string Line, string Price)[] lines)
    {
        await page.ReloadAsync();
        await Fields.SettledAsync(page);
        await Expect(page.Locator(".price-table tr[data-whole-line]")).ToHaveCountAsync(lines.Length);
        foreach (var (line, price) in lines)
            await Expect(page.GetByLabel($"Price, {line}")).ToHaveValueAsync(price);
    }

    private static async Task AddAsync(IPage page, string material, string length, string price)
    {
        await page.GetByLabel("Material, new price").FillAsync(material);
        await page.GetByLabel("Length, new price").FillAsync(length);
        await page.GetByLabel("Price, new price").FillAsync(price);
        await page.GetByLabel("Price, new price").PressAsync("Enter");
        await Expect(page.GetByLabel("Material, new price")).ToHaveValueAsync("");
        await Fields.SettledAsync(page);
    }

    private async Task<IPage> OpenAsync(string store)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/stores");
        await Fields.SettledAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a store" }).ClickAsync();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(store);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add store" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = store })).ToBeVisibleAsync();
        await Fields.SettledAsync(page);
        return page;
    }
}
