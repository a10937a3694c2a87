using System.Data;
using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Time.Testing;
using Npgsql;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Shop;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Postgres;
using ShopPlanner.Services.Stores;
using ShopPlanner.Services.Tests.Server;

namespace ShopPlanner.Services.Tests;

/// <summary>A real shop on a real database file in a folder of its own, deleted afterwards.</summary>
internal sealed class TestShop : IAsyncDisposable
{
    /// <summary>Keeps a shop where the tests keep theirs.</summary>
    public const string Anywhere = "";

    private readonly bool ownsFolder;
    private readonly string? server;

    private TestShop(string folder, bool ownsFolder, ServiceProvider services, string? server) =>
        (Folder, this.ownsFolder, Services, this.server) = (folder, ownsFolder, services, server);

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

    /// <summary>Skips a test that works on the database file itself where a server keeps the shops.</summary>
    public static void NeedsFile() =>
        Assert.SkipWhen(TestServer.KeepsAll, "Works on the database file itself, and here is none.");

    public static async Task<TestShop> OpenAsync(
        bool demo = false,
        string? folder = null,
        Action<IServiceCollection>? change = null,
        string? keptBy = Anywhere
    )
    {
        var shop = Make(folder ?? NewFolder(), folder is null, demo, change, keptBy);
        await shop.Database.OpenAsync(Cancel);
        foreach (var worker in shop.Services.GetServices<IHostedService>())
            await worker.StartAsync(Cancel);
        return shop;
    }

    /// <summary>A shop that is not opened yet.</summary>
    /// <param name="folder">Its data folder.</param>
    /// <param name="ownsFolder">Whether it goes with the shop.</param>
    /// <param name="demo">Whether it begins with the demo.</param>
    /// <param name="change">Puts something in another's place.</param>
    /// <param name="keptBy">A server's database; null for a file.</param>
    public static TestShop Make(
        string folder,
        bool ownsFolder,
        bool demo = false,
        Action<IServiceCollection>? change = null,
        string? keptBy = Anywhere
    )
    {
        var server =
            keptBy != Anywhere ? keptBy
            : TestServer.KeepsAll ? TestServer.For(folder)
            : null;
        var services = new ServiceCollection();
        services.AddSingleton<TimeProvider>(new FakeTimeProvider(new DateTimeOffset(2026, 5, 2, 9, 30, 0, TimeSpan.Zero)));
        services.AddShopPlanner(new ServicesOptions(folder, demo) { Database = server });
        services.AddSingleton<ICutPlanner, FirstFitPlanner>();
        change?.Invoke(services);
        return new TestShop(folder, ownsFolder, services.BuildServiceProvider(), server);
    }

    public T Get<T>()
        where T : notnull => Services.GetRequiredService<T>();

    /// <summary>Rows of every table, to show that nothing was half-saved.</summary>
    public IReadOnlyDictionary<string, long> CountRows()
    {
        using var connection = Open();
        return RowCounts.Of(connection);
    }

    /// <summary>Asks the database. A shop on a server is asked in a copy of it as a file, so that one way of writing does for
    /// both; what would change it there skips the test.</summary>
    public string Ask(string sql)
    {
        if (server is not null)
            return AskCopy(sql);
        using var connection = Open();
        return SqliteFacts.Ask(connection, sql);
    }

    private string AskCopy(string sql)
    {
        Assert.SkipUnless(
            sql.TrimStart().StartsWith("SELECT", StringComparison.Ordinal) || sql.EndsWith("_check", StringComparison.Ordinal),
            "Changes the file behind the program's back, and here is none."
        );
        var file = Path.Combine(Folder, $"{Guid.CreateVersion7():N}.copy");
        try
        {
            using (var db = new PostgresContextFactory(server!).CreateDbContext())
            using (db.Database.BeginTransaction(IsolationLevel.RepeatableRead))
                FileCopy.WriteAsync(db, file, CancellationToken.None).GetAwaiter().GetResult();
            using var connection = CopyFile.Open(file);
            return SqliteFacts.Ask(connection, sql);
        }
        finally
        {
            File.Delete(file);
        }
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var worker in Services.GetServices<IHostedService>())
            await worker.StopAsync(CancellationToken.None);
        await Services.DisposeAsync();
        if (!ownsFolder)
            return;
        if (server is not null)
            TestServer.Drop(Folder);
        Directory.Delete(Folder, recursive: true);
    }

    private DbConnection Open()
    {
        DbConnection connection = server is not null
            ? new NpgsqlConnection(server)
            : new SqliteConnection($"Data Source={Path.Combine(Folder, "shop.db")};Pooling=False");
        connection.Open();
        return connection;
    }
}
