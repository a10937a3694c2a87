using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using ShopPlanner.Services.Opening;
using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Tests;

/// <summary>The whole program on a data folder of its own, without a network card; the folder is deleted afterwards.</summary>
internal sealed class ShopServer : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly string folder;

    private ShopServer(WebApplication app, string folder) => (this.app, this.folder) = (app, folder);

    public static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static Task<ShopServer> OpenAsync() => OpenAsync(Directory.CreateTempSubdirectory("shop-planner-web-").FullName);

    /// <summary>Serves what is in a folder.</summary>
    public static async Task<ShopServer> OpenAsync(string folder)
    {
        var app = Built(folder, demo: false);
        await app.Services.GetRequiredService<ShopDatabase>().OpenAsync(Cancel);
        await app.StartAsync(Cancel);
        return new ShopServer(app, folder);
    }

    /// <summary>Makes the demo in a folder.</summary>
    public static async Task FillAsync(string folder)
    {
        await using var app = Built(folder, demo: true);
        await app.Services.GetRequiredService<ShopDatabase>().OpenAsync(Cancel);
    }

    public T Get<T>()
        where T : notnull => app.Services.GetRequiredService<T>();

    /// <summary>Answers requests without a network card.</summary>
    public HttpMessageHandler Handler() => app.GetTestServer().CreateHandler();

    /// <summary>A browser that has nothing in its jar yet.</summary>
    public PlainBrowser Browse() => new(Handler());

    private static WebApplication Built(string folder, bool demo) =>
        Program.Build(
            new WebSettings(folder, demo, Port: 0, Urls: [], OnlyThisComputer: true, Hosts: []),
            builder => builder.WebHost.UseTestServer()
        );

    public async ValueTask DisposeAsync()
    {
        await app.StopAsync(CancellationToken.None);
        await app.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }
}
