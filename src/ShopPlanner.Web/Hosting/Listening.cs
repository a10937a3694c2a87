using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using ShopPlanner.Services.Certificates;

namespace ShopPlanner.Web.Hosting;

/// <summary>Makes the web server listen where the settings say.</summary>
internal static class Listening
{
    /// <summary>How long a stop waits for plans to be stored and pages to be served.</summary>
    internal static readonly TimeSpan StopTime = TimeSpan.FromSeconds(30);

    /// <summary>Sets the addresses, and keeps the log to what a person can use.</summary>
    public static void ListenAsAsked(this WebApplicationBuilder builder, WebSettings settings)
    {
        // Run from a build, not only when published, the pages' files are found by their manifest.
        builder.WebHost.UseStaticWebAssets();
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning);
        // A start that fails is told in one line at the end; a worker that fails is told as critical.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        // On a home computer the keys that sign forms lie in the owner's folder, readable by the owner alone.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.Configure<HostOptions>(StopInTime);
        SetAddresses(builder.WebHost, settings);
    }

    // A stop cuts the search short and stores its best plan, beside the web server's wait for open pages and not after it. The
    // time is less than the service unit gives (TimeoutStopSec in deploy/shop-planner.service), so that it is not killed
    // meanwhile.
    private static void StopInTime(HostOptions host)
    {
        host.ServicesStopConcurrently = true;
        host.ShutdownTimeout = StopTime;
    }

    private static void SetAddresses(ConfigureWebHostBuilder host, WebSettings settings)
    {
        if (settings.Urls.Count > 0)
            host.UseUrls([.. settings.Urls]);
        else
            host.ConfigureKestrel(server =>
            {
                Listen(server, settings, settings.Port, _ => { });
                if (settings.HttpsPort is { } port)
                    Listen(server, settings, port, Certified(settings));
            });
    }

    private static void Listen(KestrelServerOptions server, WebSettings settings, int port, Action<ListenOptions> how)
    {
        if (!settings.OnlyThisComputer)
            server.ListenAnyIP(port, how);
        // A free port is chosen for one address, so there can be only one.
        else if (port == 0 || !Socket.OSSupportsIPv6)
            server.Listen(IPAddress.Loopback, port, how);
        else
            server.ListenLocalhost(port, how);
    }

    // Read at the start; renewed there when it needs to be.
    private static Action<ListenOptions> Certified(WebSettings settings)
    {
        var certificate = ShopCertificates.ForServer(settings.DataFolder, settings.Hosts, DateTimeOffset.UtcNow);
        return listening => listening.UseHttps(certificate);
    }
}
