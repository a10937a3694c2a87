using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>Where the focus is when a page was gone to.</summary>
[Collection(OneShop.Name)]
public sealed class HeadingTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_page_that_was_gone_to_has_the_focus_on_its_heading()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/workings");
        await Expect(page.Locator("h1")).ToBeFocusedAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Stores" }).First.ClickAsync();
        await Expect(page.Locator("h1", new() { HasText = "Stores" })).ToBeFocusedAsync();
    }

    // The cursor is in the field as soon as that can be used, before the server has heard that the page is drawn.
    [Fact]
    public async Task Somebody_who_types_at_once_is_not_taken_out_of_the_field()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.AddInitScriptAsync(
            """
            new MutationObserver((records, watch) => {
              const field = document.querySelector("fieldset.until-live:not([disabled]) input[type=text]");
              if (!field) return;
              watch.disconnect();
              field.addEventListener("blur", () => window.wasLeft = true);
              field.focus();
            }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ["disabled"] });
            """
        );
        await page.GotoAsync("/workings/board-feet?thickness=1&width=6");
        await page.WaitForFunctionAsync("() => document.activeElement.matches('input[type=text]')");
        await page.Keyboard.TypeAsync("123 15/16 in", new() { Delay = 50 });
        // The address follows what is typed: by then the server has long heard that the page is drawn.
        await Expect(page).ToHaveURLAsync(new Regex("15%2F16"));
        Assert.False(await page.EvaluateAsync<bool>("() => window.wasLeft === true"));
    }

    // Whoever goes by Tab from the start goes on from where the keyboard is.
    [Fact]
    public async Task Somebody_who_tabs_at_once_is_not_sent_back()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.AddInitScriptAsync(
            """
            new MutationObserver((records, watch) => {
              const link = document.querySelector("nav a");
              if (!link || !document.querySelector("fieldset.until-live:not([disabled])")) return;
              watch.disconnect();
              link.addEventListener("blur", () => window.wasLeft = true);
              link.focus();
            }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ["disabled"] });
            """
        );
        await page.GotoAsync("/workings/board-feet?thickness=1&width=6");
        await page.WaitForFunctionAsync("() => document.activeElement.matches('nav a')");
        await page.GetByLabel("Length", new() { Exact = true })
            .EvaluateAsync("el => { el.value = '8 ft'; el.dispatchEvent(new Event('input', { bubbles: true })); }");
        await Expect(page).ToHaveURLAsync(new Regex("length=8"));
        Assert.False(await page.EvaluateAsync<bool>("() => window.wasLeft === true"));
    }
}
