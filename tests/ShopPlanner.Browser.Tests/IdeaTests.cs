using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>From a built-in design to cuts: change the width, see it change, take it back, make the parts, plan them.</summary>
public sealed partial class IdeaTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task A_design_is_started_changed_taken_back_made_and_planned()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await BeginAsync(page, "Bookcase");
        await Expect(Outside(page)).ToContainTextAsync("30″");
        var before = await PictureAsync(page);
        await Width(page).FillAsync("24 1/2");
        await Expect(Outside(page)).ToContainTextAsync("24 ½″");
        await Expect(Row(page, "Toe board")).ToContainTextAsync("23 ¹⁄₁₆");
        Assert.NotEqual(before, await PictureAsync(page));
        await SavedAsync(page);
        await page.ReloadAsync();
        await LiveAsync(page);
        await Expect(Width(page)).ToHaveValueAsync("24 1/2");
        await page.GetByRole(AriaRole.Button, new() { NameRegex = Undo() }).First.ClickAsync();
        await Expect(Outside(page)).ToContainTextAsync("30″");
        Assert.Equal(before, await PictureAsync(page));
        await MakeAndPlanAsync(page);
    }

    [Fact]
    public async Task What_follows_the_drawing_stands_below_it_and_covers_nothing()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await BeginAsync(page, "Bookcase");
        var results = (await page.GetByRole(AriaRole.Region, new() { Name = "Results" }).BoundingBoxAsync())!;
        var share = (await page.GetByRole(AriaRole.Region, new() { Name = "Save and share" }).BoundingBoxAsync())!;
        Assert.True(share.Y >= results.Y + results.Height, $"{share.Y} lies above {results.Y + results.Height}");
    }

    [Fact]
    public async Task A_slider_redraws_while_it_moves()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await BeginAsync(page, "Bookcase");
        var slider = page.GetByLabel("Outside width, slider");
        await Expect(slider).ToHaveValueAsync("480");
        await slider.FocusAsync();
        for (var i = 0; i < 16; i++)
            await slider.PressAsync("ArrowLeft");
        await Expect(Width(page)).ToHaveValueAsync("29");
        await Expect(Outside(page)).ToContainTextAsync("29″");
        await Expect(slider).ToHaveValueAsync("464");
        await Width(page).FillAsync("33");
        await Expect(slider).ToHaveValueAsync("528");
    }

    [Fact]
    public async Task An_emptied_field_stays_empty_until_it_is_left()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await BeginAsync(page, "Bookcase");
        await Width(page).ClickAsync();
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.PressAsync("Delete");
        await SavedAsync(page);
        await Expect(Width(page)).ToHaveValueAsync("");
        await page.Keyboard.TypeAsync("32", new() { Delay = 30 });
        await Expect(Outside(page)).ToContainTextAsync("32″");
        await Expect(Width(page)).ToHaveValueAsync("32");
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.PressAsync("Delete");
        await SavedAsync(page);
        await page.Keyboard.PressAsync("Tab");
        await Expect(Width(page)).ToHaveValueAsync("30");
        await SavedAsync(page);
    }

    [Theory]
    [InlineData(390, 844)]
    [InlineData(640, 400)]
    public async Task The_picture_leaves_most_of_a_small_page_to_work_in(int width, int height)
    {
        var page = await browser.OpenAsync(Screen.Phone);
        await page.SetViewportSizeAsync(width, height);
        await BeginAsync(page, "Bookcase");
        await page.Locator(".idea-parts").ScrollIntoViewIfNeededAsync();
        var covered = await page.EvaluateAsync<double>(
            "() => { const box = document.querySelector('.idea-picture').getBoundingClientRect();"
                + " return Math.max(0, Math.min(box.bottom, innerHeight) - Math.max(box.top, 0)); }"
        );
        Assert.InRange(covered, 0, height * 0.3);
    }

    [Fact]
    public async Task A_part_is_found_from_the_drawing()
    {
        var page = await browser.OpenAsync(Screen.Tablet);
        await BeginAsync(page, "Bookcase");
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Views" })
            .GetByRole(AriaRole.Link, new() { Name = "Front" })
            .ClickAsync();
        await page.ArriveAsync(FrontView());
        await page.Locator(".piece-picture [data-mark^='A']").First.DispatchEventAsync("click", new { bubbles = true });
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Part A" })).ToBeVisibleAsync();
        Assert.Contains("part=A", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_view_that_is_turned_takes_its_script_from_the_server_alone()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        var wrong = new List<string>();
        page.Console += (_, message) =>
        {
            if (message.Type == "error" && !message.Text.Contains("WebGL", StringComparison.OrdinalIgnoreCase))
                wrong.Add(message.Text);
        };
        page.Request += (_, request) =>
        {
            if (
                new Uri(request.Url).Authority != browser.Address.Authority
                && !request.Url.StartsWith("data:", StringComparison.Ordinal)
            )
                wrong.Add(request.Url);
        };
        await BeginAsync(page, "Table");
        await page.GetByRole(AriaRole.Link, new() { Name = "3D", Exact = true }).ClickAsync();
        // A machine without any drawing in the round says so; this Chromium draws in software.
        await Expect(page.Locator(".turn-view canvas, .turn-view .notice").First).ToBeVisibleAsync();
        Assert.Empty(wrong);
    }

    private static async Task BeginAsync(IPage page, string design)
    {
        await page.GotoAsync("/designs");
        await LiveAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a project from this: " + design, Exact = true }).ClickAsync();
        await page.ArriveAsync(IdeaAddress());
        await Expect(Outside(page)).ToBeVisibleAsync();
        await LiveAsync(page);
    }

    private static async Task MakeAndPlanAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Make parts list" }).ClickAsync();
        await Expect(page.GetByText("on the parts list")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Steps of the project" })
            .GetByRole(AriaRole.Link, new() { Name = "Parts" })
            .ClickAsync();
        await Expect(page.GetByLabel("Part, row 1", new() { Exact = true })).ToHaveValueAsync("Side");
        await page.GetByRole(AriaRole.Link, new() { Name = "Plan the cuts" }).ClickAsync();
        await LiveAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan the cuts" }).ClickAsync();
        await page.ArriveAsync(PlanAddress(), 60_000);
        await Expect(page.Locator("svg[role=img]").First).ToBeVisibleAsync();
    }

    private static ILocator Outside(IPage page) => page.Locator(".idea-outside");

    private static ILocator Width(IPage page) => page.GetByLabel("Outside width", new() { Exact = true });

    private static ILocator Row(IPage page, string part) =>
        page.GetByRole(AriaRole.Table, new() { Name = "Parts of the drawing" })
            .GetByRole(AriaRole.Row)
            .Filter(new() { HasText = part });

    private static Task<string> PictureAsync(IPage page) => page.Locator(".idea-picture .piece-picture svg").InnerHTMLAsync();

    private static Task SavedAsync(IPage page) => Expect(page.Locator(".save-state")).ToHaveTextAsync("Saved");

    private static Task LiveAsync(IPage page) =>
        Expect(page.Locator("fieldset.until-live")).ToBeEnabledAsync(new() { Timeout = 60_000 });

    [GeneratedRegex("/projects/[0-9a-f-]{36}/idea")]
    private static partial Regex IdeaAddress();

    [GeneratedRegex("view=front")]
    private static partial Regex FrontView();

    [GeneratedRegex("/plans/[0-9a-f-]{36}$")]
    private static partial Regex PlanAddress();

    [GeneratedRegex("^Undo")]
    private static partial Regex Undo();
}
