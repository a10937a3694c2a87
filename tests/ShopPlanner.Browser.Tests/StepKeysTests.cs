using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>The keys take steps back and do them again, and leave a field its own typing.</summary>
public sealed class StepKeysTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [Fact]
    public async Task In_the_parts_list_two_presses_are_two_steps_back_and_forth()
    {
        var page = await OpenPartsAsync();
        await TypeAsync(page, "Part, row 1", "Leg");
        await TypeAsync(page, "Part, row 2", "Rail");
        // A stored cell has the cursor: its own typing is done with.
        await page.Keyboard.PressAsync("Control+z");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("");
        await page.Locator("h1").ClickAsync();
        await page.Keyboard.PressAsync("Control+Shift+z");
        await page.Keyboard.PressAsync("Control+y");
        await Expect(Cell(page, "Part, row 2")).ToHaveValueAsync("Rail");
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("Leg");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo change of 1 row" }))
            .ToHaveAttributeAsync("title", "Undo change of 1 row (Ctrl+Z)");
    }

    [Fact]
    public async Task Typing_that_is_not_stored_is_taken_back_by_its_field()
    {
        var page = await OpenPartsAsync();
        await TypeAsync(page, "Part, row 1", "Leg");
        await Cell(page, "Length, row 1").FocusAsync();
        await page.Keyboard.TypeAsync("3");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(Cell(page, "Length, row 1")).ToHaveValueAsync("");
        await Fields.SettledAsync(page);
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("Leg");
    }

    // Chromium's own undo is the document's: in an empty field it would empty the cell that was typed in last.
    [Fact]
    public async Task Any_field_keeps_the_keys_for_its_own_typing_and_no_longer()
    {
        var page = await OpenPartsAsync();
        await TypeAsync(page, "Part, row 1", "Leg");
        await page.Locator("[data-opens='project']").ClickAsync();
        var note = page.Locator("[data-scope='project']").GetByLabel("Note", new() { Exact = true });
        await note.FocusAsync();
        await page.Keyboard.TypeAsync("x");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(note).ToHaveValueAsync("");
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("Leg");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("");
        await page.Keyboard.PressAsync("Control+y");
        await Expect(Cell(page, "Part, row 1")).ToHaveValueAsync("Leg");
    }

    [Fact]
    public async Task In_an_idea_two_presses_are_two_steps_back()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await Places.GoAsync(page, "/projects/{Id:guid}/idea");
        var (width, height) = (page.GetByLabel("Outside width", new() { Exact = true }), Height(page));
        var before = await height.InputValueAsync();
        await width.FillAsync("26");
        await Fields.SettledAsync(page);
        await height.FillAsync("50");
        await Fields.SettledAsync(page);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo outside height" })).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Control+z");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(width).ToHaveValueAsync("30");
        await Expect(height).ToHaveValueAsync(before);
        await page.Keyboard.PressAsync("Control+y");
        await Expect(width).ToHaveValueAsync("26");
    }

    private static ILocator Height(IPage page) => page.GetByLabel("Outside height", new() { Exact = true });

    private async Task<IPage> OpenPartsAsync()
    {
        var page = await browser.OpenAsync(Screen.Desktop);
        await page.GotoAsync("/projects?new=true");
        await Fields.SettledAsync(page);
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Keys");
        await page.GetByRole(AriaRole.Button, new() { Name = "Create project" }).ClickAsync();
        await Expect(Cell(page, "Part, row 1")).ToBeVisibleAsync();
        await Fields.SettledAsync(page);
        return page;
    }

    private static async Task TypeAsync(IPage page, string cell, string text)
    {
        await Cell(page, cell).FillAsync(text);
        await Expect(Cell(page, cell)).ToHaveAttributeAsync("data-kept", text);
        await Fields.SettledAsync(page);
    }

    private static ILocator Cell(IPage page, string name) => page.GetByLabel(name, new() { Exact = true });
}
