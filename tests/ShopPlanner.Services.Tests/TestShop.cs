using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Time.Testing;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests;

/// <summary>A real shop on a real database file in a folder of its own, deleted afterwards.</summary>
internal sealed class TestShop : IAsyncDisposable
{
    private readonly bool ownsFolder;

    private TestShop(string folder, bool ownsFolder, ServiceProvider services) =>
        (Folder, this.ownsFolder, Services) = (folder, ownsFolder, services);

    public string Folder { get; }

    public ServiceProvider Services { get; }

    public FakeTimeProvider Clock => (FakeTimeProvider)Services.GetRequiredService<TimeProvider>();

    public ShopDatabase Database => Get<ShopDatabase>();

    public IProjectService Projects => Get<IProjectService>();

    public IPartService Parts => Get<IPartService>();

    public IMaterialService Materials => Get<IMaterialService>();

    public IStoreService Stores => Get<IStoreService>();

    public IStockService Stock => Get<IStockService>();

    public IShopService Shop => Get<IShopService>();

    public IPlanService Plans => Get<IPlanService>();

    public IBenchService Bench => Get<IBenchService>();

    public ShopWork Work => Get<ShopWork>();

    public static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static string NewFolder() => Directory.CreateTempSubdirectory("shop-planner-services-").FullName;

    public static async Task<TestShop> OpenAsync(
        bool demo = false,
        string? folder = null,
        Action<IServiceCollection>? change = null
    )
    {
        var shop = Make(folder ?? NewFolder(), folder is null, demo, change);
        await shop.Database.OpenAsync(Cancel);
        foreach (var worker in shop.Services.GetServices<IHostedService>())
            await worker.StartAsync(Cancel);
        return shop;
    }

    /// <summary>A shop that is not opened yet.</summary>
    public static TestShop Make(string folder, bool ownsFolder, bool demo = false, Action<IServiceCollection>? change = null)
    {
        var services = new ServiceCollection();
        services.AddSingleton<TimeProvider>(new FakeTimeProvider(new DateTimeOffset(2026, 5, 2, 9, 30, 0, TimeSpan.Zero)));
        services.AddShopPlanner(new ServicesOptions(folder, demo));
        services.AddSingleton<ICutPlanner, FirstFitPlanner>();
        change?.Invoke(services);
        return new TestShop(folder, ownsFolder, services.BuildServiceProvider());
    }

    public T Get<T>()
        where T : notnull => Services.GetRequiredService<T>();

    /// <summary>Rows of every table, to show that nothing was half-saved.</summary>
    public IReadOnlyDictionary<string, long> CountRows()
    {
        using var connection = OpenFile();
        var tables = new List<string>();
        using (var command = connection.CreateCommand())
        {
            command.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'";
            using var reader = command.ExecuteReader();
            while (reader.Read())
                tables.Add(reader.GetString(0));
        }

        return tables.ToDictionary(table => table, table => long.Parse(Ask(connection, $"SELECT COUNT(*) FROM \"{table}\"")));
    }

    public string Ask(string sql)
    {
        using var connection = OpenFile();
        return Ask(connection, sql);
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var worker in Services.GetServices<IHostedService>())
            await worker.StopAsync(CancellationToken.None);
        await Services.DisposeAsync();
        if (ownsFolder)
            Directory.Delete(Folder, recursive: true);
    }

    private SqliteConnection OpenFile()
    {
        var connection = new SqliteConnection($"Data Source={Path.Combine(Folder, "shop.db")};Pooling=False");
        connection.Open();
        return connection;
    }

    private static string Ask(SqliteConnection connection, string sql) => SqliteFacts.Ask(connection, sql);
}
