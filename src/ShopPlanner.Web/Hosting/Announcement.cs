using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using ShopPlanner.Services.Access;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Hosting;

/// <summary>Tells the person who started the program where to find it.</summary>
internal static class Announcement
{
    /// <summary>Prints the addresses and the data folder, a line each, once the program listens.</summary>
    public static void AnnounceWhenListening(this WebApplication app, WebSettings settings) =>
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            var bound = Bound(app.Services.GetRequiredService<IServer>());
            var lan = app.Services.GetRequiredService<LanAddresses>().ForTablet();
            Console.Out.WriteLine(Text(bound, ForTablet(lan?.ToString(), settings.Hosts, InContainer())));
            foreach (var secure in bound.Where(one => one.Scheme == "https" && bound.Any(other => other.Scheme == "http")))
                Console.Out.WriteLine(Text([secure], ForTablet(lan?.ToString(), settings.Hosts, InContainer())));
            Console.Out.WriteLine($"Its data is in {settings.DataFolder}");
            if (!settings.OnlyThisComputer && OwnerLine(app.Services, bound) is { } line)
                Console.Out.WriteLine(line);
        });

    // The code stands behind '#': a browser sends that to nobody.
    private static string? OwnerLine(IServiceProvider services, IReadOnlyCollection<Uri> bound) =>
        services.GetRequiredService<IAccessService>().OwnerCode is { } code
            ? "Other devices are refused until the shop has an owner. Make the account on this computer: "
                + $"{Here(bound.First())}{AccessLinks.Owner}#{code}"
            : null;

    /// <summary>The line: for this computer, and for a tablet where the program can be reached from one.</summary>
    internal static string Text(IReadOnlyCollection<Uri> bound, string? tablet)
    {
        var first = bound.First();
        var here = $"Shop Planner is at {Here(first)}";
        var reachable = bound.FirstOrDefault(IsAny);
        return reachable is null || tablet is null
            ? here
            : $"{here} — on the tablet: {reachable.Scheme}://{tablet}:{reachable.Port}";
    }

    /// <summary>
    /// Returns the name to type on a tablet. A container's own address leads nowhere from outside, a name given does.
    /// </summary>
    internal static string? ForTablet(string? lan, IReadOnlyList<string> hosts, bool container) =>
        container ? hosts.FirstOrDefault(host => !host.Equals("localhost", StringComparison.OrdinalIgnoreCase)) : lan;

    /// <summary>Whether the program runs in a container; deploy/Containerfile sets the usual sign of .NET.</summary>
    internal static bool InContainer() => Environment.GetEnvironmentVariable("DOTNET_RUNNING_IN_CONTAINER") == "true";

    private static string Here(Uri bound) =>
        $"{bound.Scheme}://{(IsAny(bound) || bound.IsLoopback ? "localhost" : bound.Host)}:{bound.Port}";

    private static List<Uri> Bound(IServer server) =>
        [.. server.Features.Get<IServerAddressesFeature>()!.Addresses.Select(address => new Uri(WebOptions.Spelled(address)))];

    private static bool IsAny(Uri address) => address.Host is "0.0.0.0" or "[::]";
}
