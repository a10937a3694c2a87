using Microsoft.Playwright;
using ShopPlanner.Browser.Tests.Kept;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>Adds bad places on the page of a piece, as a hand does.</summary>
internal static class BadPlaces
{
    /// <summary>Adds one of the kind that the option's value names, and waits until it is listed.</summary>
    public static async Task AddAsync(
        IPage page,
        string where,
        string along,
        string? across = null,
        string? fromEnd = null,
        string? fromEdge = null
    )
    {
        await Fields.SettledAsync(page);
        var before = await page.Locator(".bad-places li").CountAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a bad place", Exact = true }).ClickAsync();
        await page.GetByLabel("Where", new() { Exact = true }).SelectOptionAsync(where);
        await FillAsync(page, "How long", along);
        await FillAsync(page, "How wide", across);
        await FillAsync(page, "From the left end", fromEnd);
        await FillAsync(page, "From the top edge", fromEdge);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Expect(page.Locator(".bad-places li")).ToHaveCountAsync(before + 1);
    }

    private static async Task FillAsync(IPage page, string label, string? text)
    {
        if (text is not null)
            await page.GetByLabel(label, new() { Exact = true }).FillAsync(text);
    }
}
