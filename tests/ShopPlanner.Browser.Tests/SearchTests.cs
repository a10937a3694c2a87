using System.Text.RegularExpressions;
using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>One field leads anywhere, by keyboard too; a phone has a page for it.</summary>
[Collection(OneShop.Name)]
public sealed partial class SearchTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_slash_goes_to_the_field_and_the_arrows_through_what_is_found()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/stores");
        await Fields.SettledAsync(page);
        await page.Keyboard.PressAsync("/");
        await Expect(Field(page)).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("pine 1x3");
        var links = page.Locator(".find-list a");
        // The list is drawn for the first letters, too.
        await Expect(links.Last).ToHaveAttributeAsync("href", "/search?q=pine%201x3");
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(links.Nth(0)).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(links.Nth(1)).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Escape");
        await Expect(Field(page)).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        var address = await links.Nth(0).GetAttributeAsync("href");
        await page.Keyboard.PressAsync("Enter");
        await page.ArriveAsync(url => new Uri(url).PathAndQuery == address);
        await Expect(page.Locator(".find-list")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Who_goes_through_what_is_found_while_it_changes_is_led_back_to_the_field()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/stores");
        await Fields.SettledAsync(page);
        await Field(page).FillAsync("pine");
        await Expect(page.Locator(".find-list a").First).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(page.Locator(".find-list a").First).ToBeFocusedAsync();
        await page.EvaluateAsync(
            """
            () => {
              const field = document.getElementById("find");
              field.value = "nothing of that name";
              field.dispatchEvent(new Event("input", { bubbles: true }));
            }
            """
        );
        await Expect(page.Locator(".find-list a")).ToHaveCountAsync(0);
        await Expect(Field(page)).ToBeFocusedAsync();
    }

    [Fact]
    public async Task A_slash_typed_into_a_field_is_a_fraction()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/rack-and-bin");
        await Fields.SettledAsync(page);
        await page.GetByLabel("Find", new() { Exact = true }).FocusAsync();
        await page.Keyboard.TypeAsync("3/4");
        await Expect(page.GetByLabel("Find", new() { Exact = true })).ToHaveValueAsync("3/4");
    }

    [Fact]
    public async Task A_sheet_is_found_by_the_words_people_use()
    {
        var page = await browser.OpenAsync(Screen.Tablet);
        await page.GotoAsync("/projects");
        await Fields.SettledAsync(page);
        await Field(page).FillAsync("4x8 3/4 ply");
        await Expect(page.Locator(".find-list").GetByText("Birch plywood 3/4 in").First).ToBeVisibleAsync();
        await Field(page).PressAsync("Enter");
        await page.ArriveAsync(SearchAddress());
        await Expect(page.Locator(".search-page").GetByRole(AriaRole.Status)).ToContainTextAsync("match");
        await Expect(page.Locator(".search-page").GetByText("Birch plywood 3/4 in").First).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Expect(page.Locator(".search-page").GetByText("Birch plywood 3/4 in").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_phone_finds_under_more()
    {
        var page = await browser.OpenAsync(Screen.Phone);
        await page.GotoAsync("/projects");
        await Fields.SettledAsync(page);
        await Expect(page.Locator("#find")).ToBeHiddenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "More", Exact = true }).ClickAsync();
        await page.Locator(".shop-menu").GetByText("Search", new() { Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Search", Exact = true })).ToBeVisibleAsync();
        await page.GetByLabel("Find", new() { Exact = true }).FillAsync("sag");
        await page.Locator(".search-page").GetByRole(AriaRole.Link, new() { NameRegex = Sag() }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Shelf sag" })).ToBeVisibleAsync();
    }

    private static ILocator Field(IPage page) => page.GetByLabel("Search the shop");

    [GeneratedRegex("/search\\?q=4x8")]
    private static partial Regex SearchAddress();

    [GeneratedRegex("^Shelf sag")]
    private static partial Regex Sag();
}
