using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>What had the focus and is gone hands it on; what was done can be undone at once.</summary>
public sealed partial class FocusMovesTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task After_a_price_is_added_the_next_one_is_begun()
    {
        var page = await OpenAsync("/stores");
        await page.Locator("main a.name").First.ClickAsync();
        await Fields.SettledAsync(page);
        await page.GetByLabel("Material, new price").FillAsync("Pine 1x4");
        await page.GetByLabel("Length, new price").FillAsync("37 3/8");
        await page.GetByLabel("Price, new price").FillAsync("3.99");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).PressAsync("Enter");
        await Expect(page.GetByLabel("Price, Pine 1x4 37 3/8")).ToHaveValueAsync("3.99");
        await Expect(page.GetByLabel("Material, new price")).ToBeFocusedAsync();
        var remove = page.Locator("main").GetByRole(AriaRole.Button, new() { NameRegex = RemovePrice() });
        await remove.Nth(0).PressAsync("Enter");
        await Expect(Note(page)).ToContainTextAsync("removed from the price list");
        await Expect(remove.Nth(0)).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Alt+KeyZ");
        await Expect(Note(page)).ToContainTextAsync("Undone.");
    }

    [Fact]
    public async Task After_a_piece_is_put_in_the_bin_the_next_one_can_be_added()
    {
        var page = await OpenAsync("/rack-and-bin");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a piece" }).PressAsync("Enter");
        var form = page.GetByRole(AriaRole.Form, new() { Name = "Add a piece" });
        await Expect(form.GetByLabel("Material", new() { Exact = true })).ToBeFocusedAsync();
        await form.GetByLabel("Material", new() { Exact = true }).FillAsync("pine 1 x 4");
        await form.GetByLabel("Length", new() { Exact = true }).FillAsync("31 3/8");
        await form.GetByRole(AriaRole.Button, new() { Name = "Put in the bin" }).PressAsync("Enter");
        await Expect(form).ToHaveCountAsync(0);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Add a piece" })).ToBeFocusedAsync();
    }

    [Fact]
    public async Task After_a_piece_is_thrown_away_the_next_row_has_the_focus_and_undo_is_a_key_away()
    {
        var page = await OpenAsync("/rack-and-bin");
        var rows = page.Locator(".stock-table tbody tr");
        var before = await rows.CountAsync();
        var throwAway = page.Locator(".stock-table").GetByRole(AriaRole.Button, new() { NameRegex = ThrowAway() });
        var (gone, next) = (throwAway.Nth(0), throwAway.Nth(1));
        var following = (await next.GetAttributeAsync("aria-label"))!;
        await gone.PressAsync("Enter");
        await Expect(rows).ToHaveCountAsync(before - 1);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = following, Exact = true })).ToBeFocusedAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true })).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Alt+KeyZ");
        await Expect(rows).ToHaveCountAsync(before);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = following, Exact = true })).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Cancel_gives_the_focus_back_to_the_button_that_opened()
    {
        var page = await OpenAsync("/rack-and-bin");
        var correct = page.Locator(".stock-table").GetByRole(AriaRole.Button, new() { NameRegex = Correct() }).First;
        await correct.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).PressAsync("Enter");
        await Expect(correct).ToBeFocusedAsync();
        await Expect(page.Locator("body")).Not.ToBeFocusedAsync();
    }

    [Fact]
    public async Task A_notice_is_alone_and_leaves_on_time()
    {
        var page = await OpenAsync("/rack-and-bin");
        var throwAway = page.Locator(".stock-table").GetByRole(AriaRole.Button, new() { NameRegex = ThrowAway() });
        for (var i = 0; i < 3; i++)
        {
            var said = await Note(page).TextContentAsync();
            await throwAway.First.ClickAsync();
            await Expect(Note(page)).Not.ToHaveTextAsync(said!);
        }

        await Expect(page.Locator("[data-note-undo]")).ToHaveCountAsync(1);
        await page.Mouse.MoveAsync(700, 100);
        await Expect(page.Locator("[data-note-undo]")).ToHaveCountAsync(0, new() { Timeout = 20_000 });
    }

    // The first field of a form has the cursor as soon as it is drawn, and never takes it from one that is typed into.
    [Fact]
    public async Task A_form_that_opens_takes_the_cursor_from_nobody()
    {
        var page = await OpenAsync("/shop");
        await page.EvaluateAsync(
            """
            () => new MutationObserver((records, watch) => {
              const width = document.querySelector("form[data-form='material new'] [data-field='Width']");
              if (!width) return;
              watch.disconnect();
              queueMicrotask(() => {
                width.focus();
                width.addEventListener("blur", () => window.wasLeft = true);
              });
            }).observe(document.body, { subtree: true, childList: true })
            """
        );
        await page.Locator("[data-opens='material new']").ClickAsync();
        var width = page.Locator("form[data-form='material new']").GetByLabel("Width", new() { Exact = true });
        await Expect(width).ToBeFocusedAsync();
        // Any answer of the server that is still to come has come by then.
        await page.WaitForTimeoutAsync(1_500);
        Assert.False(await page.EvaluateAsync<bool>("() => window.wasLeft === true"));
    }

    private static ILocator Note(IPage page) => page.Locator("[data-note] [role=status]");

    private async Task<IPage> OpenAsync(string address)
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync(address);
        await Fields.SettledAsync(page);
        return page;
    }

    [GeneratedRegex("^Throw away ")]
    private static partial Regex ThrowAway();

    [GeneratedRegex("^Correct ")]
    private static partial Regex Correct();

    [GeneratedRegex("^Remove ")]
    private static partial Regex RemovePrice();
}
