using System.Net;
using System.Net.Sockets;

namespace ShopPlanner.Web.Hosting;

/// <summary>Makes the web server listen where the settings say.</summary>
internal static class Listening
{
    /// <summary>Sets the addresses.</summary>
    public static void ListenAsAsked(this ConfigureWebHostBuilder host, WebSettings settings)
    {
        if (settings.Urls.Count > 0) host.UseUrls([.. settings.Urls]);
        else host.ConfigureKestrel(server =>
        {
            if (!settings.OnlyThisComputer) server.ListenAnyIP(settings.Port);
            // A free port is chosen for one address, so there can be only one.
            else if (settings.Port == 0 || !Socket.OSSupportsIPv6) server.Listen(IPAddress.Loopback, settings.Port);
            else server.ListenLocalhost(settings.Port);
        });
    }
}
