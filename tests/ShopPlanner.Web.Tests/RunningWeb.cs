using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using ShopPlanner.Services.Opening;
using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Tests;

/// <summary>The real program with the demo, on a real socket, in a data folder of its own.</summary>
public sealed class RunningWeb : IAsyncLifetime
{
    private readonly string data = Directory.CreateTempSubdirectory("shop-planner-web-").FullName;
    private WebApplication? app;

    public int Port { get; private set; }

    /// <summary>A browser without redirects, so that each answer can be looked at.</summary>
    public HttpClient Client { get; private set; } = default!;

    /// <summary>What the program can do.</summary>
    public T Service<T>()
        where T : notnull => app!.Services.GetRequiredService<T>();

    public async ValueTask InitializeAsync()
    {
        app = Program.Build(new WebSettings(data, Demo: true, Port: 0, [], OnlyThisComputer: true, ["workshop.example"]), Quiet);
        await Service<ShopDatabase>().OpenAsync();
        await app.StartAsync();
        Port = new Uri(Service<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()).Port;
        Client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() })
        {
            BaseAddress = new Uri(string.Create(CultureInfo.InvariantCulture, $"http://localhost:{Port}")),
        };
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await app!.DisposeAsync();
        Directory.Delete(data, recursive: true);
    }

    /// <summary>Sends bytes as they are and reads the answer: no client that corrects a header stands between.</summary>
    public async Task<RawAnswer> SendAsync(string method, string path, string host, string? origin, params string[] more)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, Port, TestContext.Current.CancellationToken);
        await using var stream = socket.GetStream();
        var head = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{method} {path} HTTP/1.1\r\nHost: {host}\r\n");
        if (origin is not null)
            head.Append(CultureInfo.InvariantCulture, $"Origin: {origin}\r\n");
        foreach (var line in more)
            head.Append(line).Append("\r\n");
        if (!head.ToString().Contains("Connection:", StringComparison.Ordinal))
            head.Append("Connection: close\r\n");
        await stream.WriteAsync(Encoding.UTF8.GetBytes(head.Append("\r\n").ToString()), TestContext.Current.CancellationToken);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var status = await reader.ReadLineAsync(TestContext.Current.CancellationToken) ?? "";
        var lines = new List<string>();
        while (await reader.ReadLineAsync(TestContext.Current.CancellationToken) is { Length: > 0 } line)
            lines.Add(line);
        var ends = head.ToString().Contains("Connection: close", StringComparison.Ordinal);
        var body = ends ? await reader.ReadToEndAsync(TestContext.Current.CancellationToken) : "";
        return new RawAnswer(int.Parse(status.Split(' ')[1], CultureInfo.InvariantCulture), lines, body);
    }

    private static void Quiet(WebApplicationBuilder builder) => builder.Logging.SetMinimumLevel(LogLevel.Critical);
}

/// <summary>An answer as it came; the body only where the connection ends with it.</summary>
public sealed record RawAnswer(int Status, IReadOnlyList<string> Lines, string Body)
{
    public string? Header(string name) =>
        Lines
            .FirstOrDefault(line => line.StartsWith(name + ":", StringComparison.OrdinalIgnoreCase))
            ?[(name.Length + 1)..].Trim();

    public bool SetsCookie => Lines.Any(line => line.StartsWith("Set-Cookie:", StringComparison.OrdinalIgnoreCase));
}
