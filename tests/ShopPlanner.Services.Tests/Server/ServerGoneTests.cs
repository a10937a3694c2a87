using ShopPlanner.Services.Common;
using ShopPlanner.Services.Health;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Tests.Server;

/// <summary>A server that goes away and comes back under a shop that is open.</summary>
public sealed class ServerGoneTests : IDisposable
{
    private readonly string folder = TestShop.NewFolder();
    private readonly string other = TestShop.NewFolder();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        Directory.Delete(other, recursive: true);
    }

    [Fact]
    public async Task A_save_says_so_and_all_goes_on_when_it_is_back()
    {
        Assert.SkipUnless(PostgresServer.Missing is null, PostgresServer.Missing ?? "");
        using var server = new PostgresServer(isDurable: true);
        server.Ask("CREATE DATABASE shop");
        await using var shop = await TestShop.OpenAsync(folder: folder, keptBy: server.To("shop"));
        var before = await Some.ProjectAsync(shop, "Stool");
        server.Kill();
        var refused = await shop.Projects.CreateAsync("Shelf", Core.Measures.LengthUnit.Inch, CommandId.New(), Cancel);
        Assert.Equal((OutcomeKind.Faulty, "storage"), (refused.Kind, refused.Faults.Single().Field));
        Assert.Contains("can't be reached", refused.Faults.Single().Message, StringComparison.Ordinal);
        Assert.False(await shop.Get<IConditionService>().IsReadableAsync(Cancel));
        server.Start();
        await UntilAsync(() => shop.Get<IConditionService>().IsReadableAsync(Cancel));
        Assert.Equal("Stool", (await shop.Projects.GetAsync(before.Id, Cancel))!.Name);
        await Some.ProjectAsync(shop, "Shelf");
        // The restarted server knows of no program that had the database: this one takes it again.
        await UntilAsync(IsRefusedAsync(server));
        await UntilAsync(() =>
            Task.FromResult(shop.Get<IShopHealth>().Notices.All(notice => notice.Topic != HealthTopic.Server))
        );
    }

    private Func<Task<bool>> IsRefusedAsync(PostgresServer server) =>
        async () =>
        {
            await using var second = TestShop.Make(other, ownsFolder: false, keptBy: server.To("shop"));
            var refused = await Record.ExceptionAsync(() => second.Database.OpenAsync(Cancel));
            return refused is ShopStartException
                && refused.Message.Contains("Another Shop Planner is running", StringComparison.Ordinal);
        };

    private static async Task UntilAsync(Func<Task<bool>> isSo)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        patience.CancelAfter(TimeSpan.FromSeconds(30));
        while (!await isSo())
            await Task.Delay(300, patience.Token);
    }
}
