using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
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

    /// <summary>Serves a shop of its own, asked for with other options.</summary>
    public static Task<ShopServer> OpenAsync(Func<WebSettings, WebSettings> ask) =>
        OpenAsync(Directory.CreateTempSubdirectory("shop-planner-web-").FullName, ask);

    /// <summary>Serves what is in a folder.</summary>
    public static async Task<ShopServer> OpenAsync(string folder, Func<WebSettings, WebSettings>? ask = null)
    {
        var app = Built(folder, demo: false, ask);
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

    /// <summary>Answers a request of any sender.</summary>
    public Task<HttpContext> SendAsync(Action<HttpContext> request) => app.GetTestServer().SendAsync(request, Cancel);

    /// <summary>A browser that has nothing in its jar yet.</summary>
    public PlainBrowser Browse() => new(Handler());

    private static WebApplication Built(string folder, bool demo, Func<WebSettings, WebSettings>? ask = null)
    {
        var settings = new WebSettings(folder, demo, Port: 0, Urls: [], OnlyThisComputer: true, Hosts: []);
        return Program.Build(ask?.Invoke(settings) ?? settings, builder => builder.WebHost.UseTestServer());
    }

    public async ValueTask DisposeAsync()
    {
        await app.StopAsync(CancellationToken.None);
        await app.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }
}
