using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// Working a figure out as a builder does it: type, see it change, come back to it, take it along to a project.
/// </summary>
public sealed partial class WorkingTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    public static TheoryData<string, string, string, string> Everyday() =>
        new()
        {
            { "board-feet", "Thickness as sold=1|Width=5 1/2|Length=8 ft", "3.67 bd ft", "Pieces=12" },
            { "spacing", "Clear span=32 1/2|Width of one=2 1/2|How many=5", "3 ²¹⁄₆₄", "How many=6" },
            { "stability", "Depth of the case=12|Height=34 1/2|Weight, empty=60 lb", "0.", "Weight, empty=200 lb" },
        };

    [Theory]
    [MemberData(nameof(Everyday))]
    public async Task Values_typed_change_the_result_and_a_reload_keeps_them(
        string form,
        string typed,
        string result,
        string then
    )
    {
        var page = await browser.OpenAsync(Screen.Tablet);
        await page.GotoAsync("/workings");
        await LiveAsync(page);
        await page.Locator($"a[href='/workings/{form}']").ClickAsync();
        await Expect(page.Locator(".working-result")).ToBeVisibleAsync();
        foreach (var pair in typed.Split('|'))
            await TypeAsync(page, pair);
        await Expect(Result(page)).ToContainTextAsync(result);
        var first = await Result(page).InnerTextAsync();
        await TypeAsync(page, then);
        await Expect(Result(page)).Not.ToHaveTextAsync(first);
        var second = await Result(page).InnerTextAsync();
        await page.ArriveAsync(url => url.Contains("=" + Uri.EscapeDataString(then.Split('=')[1]), StringComparison.Ordinal));
        await page.ReloadAsync();
        await Expect(Result(page)).ToHaveTextAsync(second);
        await Expect(Field(page, then.Split('=')[0])).ToHaveValueAsync(then.Split('=')[1]);
        await Expect(page.Locator("svg#working-sketch")).ToBeVisibleAsync();
        await LiveAsync(page);
        await page.GoBackAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Shop math", Exact = true })).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_working_goes_to_a_project_with_its_part_and_comes_back_from_there()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/workings/spacing?span=32.5&member=2.5&count=5&unit=in");
        await LiveAsync(page);
        await page.GetByLabel("Project", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Index = 0 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Save to project" }).ClickAsync();
        await Expect(page.GetByText("1 part added")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Status).GetByRole(AriaRole.Link).ClickAsync();
        var kept = page.GetByRole(AriaRole.Region, new() { Name = "Shop math saved" });
        await Expect(kept).ToBeVisibleAsync();
        await Expect(page.GetByText("Material is empty: choose a material.")).ToBeVisibleAsync();
        await kept.GetByRole(AriaRole.Link, new() { Name = "Equal spacing" }).ClickAsync();
        await Expect(Field(page, "Clear span")).ToHaveValueAsync("32.5");
        await page.GoBackAsync();
        await LiveAsync(page);
        await kept.GetByRole(AriaRole.Button, new() { NameRegex = TakeOut() }).ClickAsync();
        await Expect(kept).Not.ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).Last.ClickAsync();
        await Expect(kept).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Fast_typing_loses_nothing()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/workings/board-feet?thickness=1&width=6");
        await LiveAsync(page);
        await Field(page, "Length").PressSequentiallyAsync("123 15/16 in", new() { Delay = 25 });
        await Expect(page).ToHaveURLAsync(new Regex("15%2F16"));
        await Field(page, "Pieces").PressSequentiallyAsync("2468", new() { Delay = 25 });
        await Expect(page).ToHaveURLAsync(new Regex("2468"));
        await Expect(Field(page, "Length")).ToHaveValueAsync("123 15/16 in");
        await Expect(Field(page, "Pieces")).ToHaveValueAsync("2468");
    }

    private static ILocator Result(IPage page) => page.Locator(".figure-large");

    private static ILocator Field(IPage page, string label) => page.GetByLabel(label, new() { Exact = true });

    private static Task TypeAsync(IPage page, string pair) => Field(page, pair.Split('=')[0]).FillAsync(pair.Split('=')[1]);

    private static Task LiveAsync(IPage page) =>
        page.Locator("fieldset.until-live:not([disabled])")
            .First.WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = 60_000 });

    [GeneratedRegex("^Remove: Equal spacing")]
    private static partial Regex TakeOut();
}
