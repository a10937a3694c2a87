using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>Every button that makes something makes one thing, however often it is pressed.</summary>
public sealed class TwiceTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    private const int Presses = 64;

    [Fact]
    public async Task A_project_is_begun_once()
    {
        var page = await OpenAsync("/projects");
        await page.Locator("[data-opens='new-project']").ClickAsync();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Twice pressed");
        await PressAsync(page, "form[data-form='new-project'] [type=submit]");
        await page.ArriveAsync(url => url.EndsWith("/parts", StringComparison.Ordinal));
        Assert.Equal(1, await CountAsync("/projects", "main a.name", "Twice pressed"));
    }

    [Fact]
    public async Task A_design_begins_one_project()
    {
        var page = await OpenAsync("/designs");
        var before = await CountAsync("/projects", "main a.name", "Plant stand");
        await PressAsync(page, "[data-command*='plant-stand']");
        await page.ArriveAsync(url => url.EndsWith("/idea", StringComparison.Ordinal));
        Assert.Equal(before + 1, await CountAsync("/projects", "main a.name", "Plant stand"));
    }

    [Fact]
    public async Task A_store_and_a_price_are_added_once()
    {
        var page = await OpenAsync("/stores");
        await page.Locator("[data-opens='new-store']").ClickAsync();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Pressed Lumber");
        await PressAsync(page, "form[data-form='new-store'] [type=submit]");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Pressed Lumber" })).ToBeVisibleAsync();
        Assert.Equal(1, await CountAsync("/stores", "main a.name", "Pressed Lumber"));
        await Fields.SettledAsync(page);
        await page.GetByLabel("Material, new price").FillAsync("Pine 1x4");
        await page.GetByLabel("Length, new price").FillAsync("8 ft");
        await page.GetByLabel("Price, new price").FillAsync("7.25");
        await PressAsync(page, "[data-command='new-price-0']");
        await Expect(page.GetByLabel("Price, Pine 1x4")).ToBeVisibleAsync();
        await Expect(page.Locator(".price-table tbody tr[data-scope]")).ToHaveCountAsync(1);
        await Expect(page.GetByLabel("Material, new price")).ToHaveValueAsync("");
    }

    [Fact]
    public async Task A_piece_is_put_in_the_bin_once()
    {
        var page = await OpenAsync("/rack-and-bin");
        var before = await page.Locator(".stock-table tbody tr").CountAsync();
        await page.Locator("[data-opens='new-piece']").ClickAsync();
        await page.GetByRole(AriaRole.Form).GetByLabel("Material", new() { Exact = true }).FillAsync("Pine 1x4");
        await page.GetByRole(AriaRole.Form).GetByLabel("Length", new() { Exact = true }).FillAsync("33 1/2");
        await PressAsync(page, "form[data-form='new-piece'] [type=submit]");
        await Expect(page.Locator("form[data-form='new-piece']")).ToHaveCountAsync(0);
        await Expect(page.Locator(".stock-table tbody tr")).ToHaveCountAsync(before + 1);
        await StaysClosedAsync(page, "new-piece");
    }

    [Fact]
    public async Task A_material_is_added_once()
    {
        var page = await OpenAsync("/shop");
        await page.Locator("[data-opens='material new']").ClickAsync();
        var form = page.Locator("form[data-form='material new']");
        await form.GetByLabel("Name", new() { Exact = true }).FillAsync("Pressed pine");
        await form.GetByLabel("Thickness", new() { Exact = true }).FillAsync("3/4");
        await form.GetByLabel("Width", new() { Exact = true }).FillAsync("4 3/8");
        await PressAsync(page, "form[data-form='material new'] [type=submit]");
        await Expect(form).ToHaveCountAsync(0);
        await StaysClosedAsync(page, "material new");
        Assert.Equal(1, await CountAsync("/shop", "main td", "Pressed pine"));
    }

    [Fact]
    public async Task A_copy_of_the_shop_is_made_once()
    {
        var page = await OpenAsync("/shop");
        var folder = Path.Combine(kept.App.DataFolder, "backups");
        var before = Directory.Exists(folder) ? Directory.GetFiles(folder).Length : 0;
        await PressAsync(page, "[data-command='copy']");
        await Expect(page.GetByText("Backup made and checked.").First).ToBeVisibleAsync();
        await Expect(page.Locator("[data-busy]")).ToHaveCountAsync(0);
        Assert.Equal(before + 1, Directory.GetFiles(folder).Length);
    }

    [Fact]
    public async Task Parts_are_made_once_and_a_figure_is_kept_once()
    {
        var page = await OpenAsync("/workings/spacing?span=32.5&member=2.5&count=5&unit=in");
        await PressAsync(page, "form[data-form='use-in-project'] [type=submit]");
        await Expect(page.GetByText("1 part added")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Status).GetByRole(AriaRole.Link).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Shop math saved" }).GetByRole(AriaRole.Listitem))
            .ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_plan_is_begun_once()
    {
        var page = await OpenAsync("/plans/new");
        var before = await CountAsync("/plans", "main li.row", "");
        await PressAsync(page, "form[data-form^='order'] [type=submit]");
        await page.ArriveAsync(url => System.Text.RegularExpressions.Regex.IsMatch(url, "/plans/[0-9a-f-]{36}$"), 60_000);
        Assert.Equal(before + 1, await CountAsync("/plans", "main li.row", ""));
    }

    // What the browser kept for the form is let go, and nothing opens it again.
    private static async Task StaysClosedAsync(IPage page, string form)
    {
        await page.WaitForFunctionAsync("() => !Object.keys(localStorage).some(key => key.startsWith('shop-planner typed '))");
        await page.EvaluateAsync("() => new Promise(done => setTimeout(done, 500))");
        await Expect(page.Locator($"form[data-form='{form}']")).ToHaveCountAsync(0);
    }

    private async Task<IPage> OpenAsync(string address)
    {
        var page = await kept.OpenAsync();
        await page.GotoAsync(address);
        await Fields.SettledAsync(page);
        return page;
    }

    // A hand that is impatient, and an event that is sent again.
    private static async Task PressAsync(IPage page, string button) =>
        await page.EvaluateAsync(
            """
            ([button, times]) => {
              const one = document.querySelector(button), host = one.closest("form[data-form]") ?? one;
              one.click();
              const kept = Object.keys(sessionStorage).find(key => key.startsWith("shop-planner command "));
              const { id } = JSON.parse(sessionStorage.getItem(kept));
              for (let i = 1; i < times; i++) {
                one.click();
                host.dispatchEvent(new CustomEvent("shop-command", { bubbles: true, detail: { id } }));
              }
            }
            """,
            new object[] { button, Presses }
        );

    private async Task<int> CountAsync(string address, string selector, string text)
    {
        var other = await kept.OpenElsewhereAsync();
        await other.GotoAsync(address);
        await Fields.SettledAsync(other);
        var count = await other.Locator(selector, new() { HasText = text }).CountAsync();
        await other.Context.CloseAsync();
        return count;
    }
}
