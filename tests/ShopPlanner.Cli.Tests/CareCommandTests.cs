using System.Diagnostics;
using System.Globalization;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services;
using ShopPlanner.Services.Opening;

namespace ShopPlanner.Cli.Tests;

/// <summary>Backup, restore and the check of a data folder, by the built program.</summary>
public sealed class CareCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    private string Shop => scratch["shop"];

    private string Database => Path.Combine(Shop, "shop.db");

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task A_backup_is_made_brought_elsewhere_restored_into_an_empty_folder_and_checked()
    {
        await MakeShopAsync();
        var elsewhere = scratch["elsewhere.db"];
        var made = await ShopPlannerProgram.RunAsync("backup", "--data", Shop, "--to", elsewhere);
        Assert.Equal((0, ""), (made.Exit, made.Error));
        Assert.Contains("Backup made and checked", made.Output, StringComparison.Ordinal);
        var other = scratch["other"];
        var restored = await ShopPlannerProgram.RunAsync("restore", elsewhere, "--data", other);
        Assert.Equal((0, ""), (restored.Exit, restored.Error));
        var check = await ShopPlannerProgram.RunAsync("check", "--data", other);
        Assert.Equal((3, ""), (check.Exit, check.Error));
        Assert.Contains("is whole: every page, every reference", check.Output, StringComparison.Ordinal);
        Assert.Contains("There is no good backup", check.Output, StringComparison.Ordinal);
        Assert.Equal(0, (await ShopPlannerProgram.RunAsync("check", "--data", Shop)).Exit);
    }

    [Fact]
    public async Task What_cannot_be_backed_up_or_restored_is_said_in_one_line_with_status_2()
    {
        var none = await ShopPlannerProgram.RunAsync("backup", "--data", scratch["none"]);
        Assert.Equal(2, none.Exit);
        Assert.Contains("There is no shop in", none.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(scratch["none"], "shop.db")));
        var empty = await ShopPlannerProgram.RunAsync("restore", scratch.Write("empty.db", ""), "--data", scratch["none"]);
        Assert.Equal(2, empty.Exit);
        Assert.Contains("is empty. Nothing was changed.", empty.Error, StringComparison.Ordinal);
        Assert.Equal(2, (await ShopPlannerProgram.RunAsync("check", "--data", scratch["none"])).Exit);
    }

    [Theory]
    [InlineData("", "name the server's database with --database")]
    [InlineData("Host=db.invalid", "names no server or no database")]
    [InlineData("Hose=db.invalid", "--database cannot be read")]
    public async Task A_move_without_a_server_that_can_be_asked_is_refused_in_one_line(string database, string why)
    {
        await MakeShopAsync();
        var refused = await ShopPlannerProgram.RunAsync("move", "server", "--data", Shop, "--database", database);
        Assert.Equal((2, ""), (refused.Exit, refused.Output));
        Assert.Contains(why, refused.Error, StringComparison.Ordinal);
        Assert.Single(refused.Error.TrimEnd().Split('\n'));
    }

    [Fact]
    public async Task A_damaged_database_is_not_sound()
    {
        await MakeShopAsync();
        await ShopPlannerProgram.RunAsync("backup", "--data", Shop);
        using (var file = new FileStream(Database, FileMode.Open))
        {
            file.Position = 4096;
            file.Write(new byte[20_000]);
        }

        var check = await ShopPlannerProgram.RunAsync("check", "--data", Shop);
        Assert.Equal(2, check.Exit);
        Assert.Contains("is damaged", check.Output, StringComparison.Ordinal);
        Assert.Contains("The newest good backup is", check.Output, StringComparison.Ordinal);
    }

    // Killed for certain, at times spread over what a restore takes. A start of the program takes longer than the restore, so what
    // does not have to be killed runs here.
    [Fact]
    public async Task Killed_at_any_moment_a_restore_leaves_a_shop_that_opens()
    {
        await MakeShopAsync();
        string copy;
        await using (var care = new ShopCare(Shop, TimeProvider.System))
            copy = await care.BackUpAsync(TestContext.Current.CancellationToken);
        var watch = Stopwatch.StartNew();
        Assert.Equal(0, (await ShopPlannerProgram.RunAsync("restore", copy, "--data", Shop)).Exit);
        var whole = watch.Elapsed;
        const int Rounds = 4;
        for (var round = 1; round <= Rounds; round++)
        {
            using var process = ShopPlannerProgram.Start("dotnet", ShopPlannerProgram.Dll, "restore", copy, "--data", Shop);
            await Task.Delay(whole * (0.3 + (0.7 * round / Rounds)), TestContext.Current.CancellationToken);
            process.Kill();
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            await MakeShopAsync();
            await using var care = new ShopCare(Shop, TimeProvider.System);
            var check = care.Check();
            Assert.True(
                check is { IsSound: true, HasFreshBackup: true },
                string.Create(CultureInfo.InvariantCulture, $"round {round}: {string.Join('\n', check.Lines)}")
            );
        }
    }

    // Opens a shop as the web program does, and closes it.
    private async Task MakeShopAsync()
    {
        await using var services = new ServiceCollection()
            .AddShopPlanner(new ServicesOptions(Shop, Demo: false))
            .BuildServiceProvider();
        await services.GetRequiredService<ShopDatabase>().OpenAsync(TestContext.Current.CancellationToken);
    }
}
