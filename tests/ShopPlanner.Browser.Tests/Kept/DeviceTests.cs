using Microsoft.Data.Sqlite;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShopPlanner.Browser.Tests.Kept;

/// <summary>Two devices, and a program that is killed while it saves.</summary>
public sealed class DeviceTests(KeptFixture kept) : IClassFixture<KeptFixture>
{
    // Connections that the browser tries meanwhile: every half second at first, ten times, and then every two.
    private const int LongOutage = 12;
    private const int ForgottenAfter = 8;

    [Fact]
    public async Task What_two_devices_typed_is_shown_side_by_side_and_either_can_be_had()
    {
        var (page, other) = (await OpenShopAsync(kept.OpenAsync()), await OpenShopAsync(kept.OpenElsewhereAsync()));
        kept.Line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        await TypeAsync(page, "3/16");
        await TypeAsync(other, "5/32");
        await StoredAsync("5/32");
        kept.Line.Restore();
        var said = page.GetByText("Another device changed this to ‘5/32’. You typed ‘3/16’.");
        await Expect(said).ToBeVisibleAsync();
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Not saved: check the marked fields");
        await StoredAsync("5/32");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep ‘3/16’" }).ClickAsync();
        await StoredAsync("3/16");
        await Expect(said).Not.ToBeVisibleAsync();
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task The_other_devices_text_is_taken_and_stays_after_a_reload()
    {
        var (page, other) = (await OpenShopAsync(kept.OpenAsync()), await OpenShopAsync(kept.OpenElsewhereAsync()));
        kept.Line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        await TypeAsync(page, "7/64");
        await TypeAsync(other, "9/64");
        await StoredAsync("9/64");
        kept.Line.Restore();
        await page.GetByRole(AriaRole.Button, new() { Name = "Use ‘9/64’" }).ClickAsync();
        await Expect(Kerf(page)).ToHaveValueAsync("9/64");
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved");
        await page.ReloadAsync();
        await Fields.SettledAsync(page);
        await Expect(Kerf(page)).ToHaveValueAsync("9/64");
    }

    [Theory]
    [InlineData("shop")]
    [InlineData("parts")]
    public async Task A_program_killed_while_it_saves_loses_nothing(string place)
    {
        for (var round = 1; round <= 3; round++)
        {
            var page = await kept.OpenAsync();
            var field = await OpenFieldAsync(page, place);
            var text = $"{round + 1}/32";
            await using (var held = await HoldWritersAsync())
            {
                await field.FillAsync(text);
                await field.PressAsync("Tab");
                await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saving…");
                await kept.App.KillAsync();
            }

            await kept.RestartAsync();
            await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved", new() { Timeout = 60_000 });
            await Expect(field).ToHaveValueAsync(text);
            var other = await kept.OpenElsewhereAsync();
            await Expect(await OpenFieldAsync(other, place)).ToHaveValueAsync(text);
            await page.Context.CloseAsync();
            await other.Context.CloseAsync();
        }
    }

    [Fact]
    public async Task Undo_without_a_line_takes_back_what_was_typed_last()
    {
        var page = await kept.OpenAsync();
        var field = await OpenFieldAsync(page, "parts");
        var before = await field.InputValueAsync();
        kept.Line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        await field.FillAsync("19 3/16");
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Kept on this device, not saved yet (1)");
        await page.Locator("main [data-undo]").ClickAsync(new() { Force = true });
        await Expect(field).ToHaveValueAsync(before);
        kept.Line.Restore();
        await Fields.SettledAsync(page);
        await Expect(field).ToHaveValueAsync(before);
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved");
    }

    [Fact]
    public async Task A_long_outage_ends_with_everything_stored()
    {
        var page = await kept.OpenAsync();
        var field = await OpenFieldAsync(page, "parts");
        kept.Line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        await field.FillAsync("21 5/16");
        await field.PressAsync("Tab");
        await kept.Line.RefusedAsync(LongOutage, TestContext.Current.CancellationToken);
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Kept on this device, not saved yet (1)");
        kept.Line.Restore();
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved", new() { Timeout = 30_000 });
        var other = await kept.OpenElsewhereAsync();
        await Expect(await OpenFieldAsync(other, "parts")).ToHaveValueAsync("21 5/16");
    }

    [Fact]
    public async Task An_outage_longer_than_the_program_remembers_a_page_loses_nothing()
    {
        var cancel = TestContext.Current.CancellationToken;
        var forgetful = new Dictionary<string, string> { ["Circuits__DisconnectedCircuitRetentionPeriod"] = "00:00:01" };
        await using var app = await RunningApp.StartAsync(forgetful, cancel);
        await using var line = new DroppingProxy(app.Address.Port);
        var page = await OpenShopAsync(kept.OpenAtAsync(line.Address));
        line.Drop();
        await Expect(page.Locator("body[data-line=down]")).ToBeVisibleAsync();
        await TypeAsync(page, "11/64");
        await line.RefusedAsync(ForgottenAfter, cancel);
        line.Restore();
        await Expect(page.Locator("[data-save-state]")).ToHaveTextAsync("Saved", new() { Timeout = 30_000 });
        await Expect(Kerf(page)).ToHaveValueAsync("11/64");
        var other = await OpenShopAsync(kept.OpenAtAsync(app.Address));
        await Expect(Kerf(other)).ToHaveValueAsync("11/64");
    }

    private static async Task<IPage> OpenShopAsync(Task<IPage> open)
    {
        var page = await open;
        await page.GotoAsync("/shop");
        await Fields.SettledAsync(page);
        return page;
    }

    private static async Task<ILocator> OpenFieldAsync(IPage page, string place)
    {
        if (place == "shop")
        {
            await page.GotoAsync("/shop");
            await Fields.SettledAsync(page);
            return Kerf(page);
        }

        await page.GotoAsync("/projects");
        await page.Locator("main a.name").First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Table, new() { Name = "Parts" })).ToBeVisibleAsync();
        await Fields.SettledAsync(page);
        return page.GetByLabel("Length, row 1", new() { Exact = true });
    }

    private static ILocator Kerf(IPage page) => page.GetByLabel("Table saw: kerf", new() { Exact = true });

    private static async Task TypeAsync(IPage page, string text)
    {
        await Kerf(page).FillAsync(text);
        await Kerf(page).PressAsync("Tab");
    }

    private async Task StoredAsync(string kerf)
    {
        var fresh = await kept.OpenElsewhereAsync();
        for (var tries = 0; ; tries++)
        {
            await fresh.GotoAsync("/shop");
            await Fields.SettledAsync(fresh);
            var stored = await Kerf(fresh).InputValueAsync();
            if (stored == kerf || tries == 20)
            {
                Assert.Equal(kerf, stored);
                break;
            }
        }

        await fresh.Context.CloseAsync();
    }

    // Another writer at the database: what comes after it queues.
    private async Task<IAsyncDisposable> HoldWritersAsync()
    {
        var connection = new SqliteConnection($"Data Source={Path.Combine(kept.App.DataFolder, "shop.db")};Pooling=False");
        await connection.OpenAsync();
        await using var begin = connection.CreateCommand();
        begin.CommandText = "BEGIN IMMEDIATE";
        await begin.ExecuteNonQueryAsync();
        return connection;
    }
}
