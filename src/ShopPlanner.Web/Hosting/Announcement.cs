using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace ShopPlanner.Web.Hosting;

/// <summary>Tells the person who started the program where to find it.</summary>
internal static class Announcement
{
    /// <summary>Prints one line once the program listens.</summary>
    public static void AnnounceWhenListening(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() =>
            Console.Out.WriteLine(
                Text(
                    Bound(app.Services.GetRequiredService<IServer>()),
                    app.Services.GetRequiredService<LanAddresses>().ForTablet()
                )
            )
        );

    /// <summary>The line: for this computer, and for a tablet where the program can be reached from one.</summary>
    internal static string Text(IReadOnlyCollection<Uri> bound, IPAddress? lan)
    {
        var first = bound.First();
        var here =
            $"Shop Planner is at {first.Scheme}://{(IsAny(first) || first.IsLoopback ? "localhost" : first.Host)}:{first.Port}";
        var reachable = bound.FirstOrDefault(IsAny);
        return reachable is null || lan is null ? here : $"{here} — on the tablet: {reachable.Scheme}://{lan}:{reachable.Port}";
    }

    private static List<Uri> Bound(IServer server) =>
        [.. server.Features.Get<IServerAddressesFeature>()!.Addresses.Select(address => new Uri(WebOptions.Spelled(address)))];

    private static bool IsAny(Uri address) => address.Host is "0.0.0.0" or "[::]";
}
