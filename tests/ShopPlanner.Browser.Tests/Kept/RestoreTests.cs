using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>A backup is restored from Setup: the program closes, restores and opens again, and the page comes back.</summary>
public sealed partial class RestoreTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    [Fact]
    public async Task A_backup_is_looked_at_and_restored_and_what_came_after_it_is_gone()
    {
        var page = await kept.OpenAsync();
        // Opened again by itself the program keeps its port only where it was given one.
        await kept.App.KillAsync();
        await kept.RestartAsync();
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Back up now", Exact = true }).ClickAsync();
        await Expect(page.GetByText("Backup made and checked.")).ToBeVisibleAsync();
        await BeginAProjectAsync(page);

        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        await page.GetByText(AllBackups()).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = RestoreOne() }).First.ClickAsync();
        var look = page.GetByRole(AriaRole.Region, new() { Name = "Restore a backup" });
        await Expect(look).ToBeFocusedAsync();
        await look.GetByRole(AriaRole.Button, new() { Name = "Cancel", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { NameRegex = RestoreOne() }).First).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(look.Locator("tbody tr").First.Locator("th, td"))
            .ToHaveTextAsync(["Projects", "4", "5"], new() { Timeout = 60_000 });
        await look.GetByRole(AriaRole.Button, new() { Name = "Restore this backup", Exact = true }).ClickAsync();

        await Expect(page.Locator("[data-health=Restore]")).ToContainTextAsync("was restored.", new() { Timeout = 60_000 });
        await page.GotoAsync("/projects");
        await Expect(page.Locator("main a.name")).ToHaveCountAsync(4);
        await page.Context.CloseAsync();
    }

    private static async Task BeginAProjectAsync(IPage page)
    {
        await page.GotoAsync("/designs");
        await Fields.SettledAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start a project from this: Bookcase", Exact = true }).ClickAsync();
        await page.ArriveAsync(url => url.EndsWith("/idea", StringComparison.Ordinal));
    }

    [GeneratedRegex("^Show all [0-9]+ backups$")]
    private static partial Regex AllBackups();

    [GeneratedRegex("^Restore the backup of ")]
    private static partial Regex RestoreOne();
}
