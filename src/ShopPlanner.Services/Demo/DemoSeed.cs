using ShopPlanner.Services.Storage;
namespace ShopPlanner.Services.Demo;
internal static class DemoSeed
{
    public static Task AddToEmptyShopAsync(ShopContext db, TimeProvider clock, CancellationToken cancel) => Task.CompletedTask;
}
