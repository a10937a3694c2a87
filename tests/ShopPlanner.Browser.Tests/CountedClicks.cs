using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests;

/// <summary>Clicks as a builder makes them, counted: a field that is gone to by hand is one as well.</summary>
internal sealed class CountedClicks(IPage page)
{
    private readonly List<string> made = [];

    public int Count => made.Count;

    public Task LinkAsync(string name) =>
        ClickAsync(page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).First, name);

    public Task ButtonAsync(string name) =>
        ClickAsync(page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex(name) }).First, name);

    public async Task FillAsync(string label, string text)
    {
        var field = page.GetByLabel(label, new() { Exact = true });
        await ClickAsync(field, label);
        await field.FillAsync(text);
    }

    public async Task ClickAsync(ILocator what, string name)
    {
        await what.ClickAsync();
        made.Add(name);
    }

    /// <summary>On the page of a plan: everything is bought.</summary>
    public async Task BuyAllAsync()
    {
        await LinkAsync("Buy");
        var lists = page.GetByRole(AriaRole.List, new() { Name = "Boards and sheets" });
        var ticks = lists.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Bought: ") });
        await Expect(ticks.First).ToBeVisibleAsync();
        var all = page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^All bought at ") });
        var atOnce = await all.CountAsync() == 1;
        if (atOnce)
            await ClickAsync(all, "All bought");
        for (var line = 0; line < await ticks.CountAsync(); line++)
        {
            if (!atOnce)
                await ClickAsync(ticks.Nth(line), "Bought");
            await Expect(ticks.Nth(line)).ToHaveAttributeAsync("aria-pressed", "true");
        }
    }

    /// <summary>Writes the way down, for whoever wants to shorten it.</summary>
    public void Print() => TestContext.Current.SendDiagnosticMessage($"{made.Count} clicks: {string.Join(", ", made)}");
}
