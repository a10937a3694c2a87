using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>
/// Kill after kill while a browser types: nothing that was typed is missing. Minutes long, so it is run by itself, once, by
/// tests/run.sh.
/// </summary>
public sealed class KillTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    private const int Rounds = 60;

    [Fact(Explicit = true)]
    public async Task Sixty_kills_lose_nothing_that_was_typed()
    {
        var random = new Random(20261127);
        var page = await kept.OpenAsync();
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        var names = new[] { "Table saw: kerf", "Table saw: widest rip", "Table saw: longest crosscut", "Car: longest piece" };
        var typed = new Dictionary<string, string>();
        for (var round = 1; round <= Rounds; round++)
        {
            var name = names[random.Next(names.Length)];
            typed[name] = $"{round % 15 + 1}/{(name.EndsWith("kerf", StringComparison.Ordinal) ? 64 : 2)}";
            await page.GetByLabel(name, new() { Exact = true }).FillAsync(typed[name]);
            await page.GetByLabel(name, new() { Exact = true }).PressAsync("Tab");
            for (var frames = random.Next(4); frames > 0; frames--)
                await Fields.DrawnAsync(page);
            await kept.App.KillAsync();
            await kept.RestartAsync();
            await page.WaitForFunctionAsync("() => document.body.dataset.line !== 'down'", null, new() { Timeout = 60_000 });
            await Fields.SettledAsync(page);
            await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved");
            foreach (var (field, text) in typed)
                await Expect(page.GetByLabel(field, new() { Exact = true })).ToHaveValueAsync(text);
        }

        var other = await kept.OpenElsewhereAsync();
        await other.GotoAsync("/shop");
        await Fields.SettledAsync(other);
        foreach (var (field, text) in typed)
            await Expect(other.GetByLabel(field, new() { Exact = true })).ToHaveValueAsync(text);
    }
}
