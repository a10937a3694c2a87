using System.Net;
using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Security;

/// <summary>
/// The names this program may be opened by. A page elsewhere can make its own name point at this computer (DNS rebinding); it
/// cannot make the browser send one of these names.
/// </summary>
internal sealed class KnownHosts(WebSettings settings, LanAddresses lan)
{
    private readonly HashSet<string> names = Names(settings);

    /// <summary>Whether the Host header can be part of an address: a name, and a port that there can be.</summary>
    public static bool IsAddress(HostString host) =>
        Uri.TryCreate($"http://{host.Value}/", UriKind.Absolute, out var uri)
        && uri.PathAndQuery == "/"
        && uri.UserInfo.Length == 0;

    /// <summary>Whether the Host header names this computer.</summary>
    public bool Knows(HostString host)
    {
        if (!host.HasValue)
            return false;
        var name = host.Host.TrimEnd('.');
        return names.Contains(name) || (IPAddress.TryParse(name.Trim('[', ']'), out var address) && IsOwn(address));
    }

    private bool IsOwn(IPAddress address) => IPAddress.IsLoopback(address) || lan.All().Any(own => SameAddress(own, address));

    // A link-local address carries the number of the card it was seen on, which a Host header does not.
    private static bool SameAddress(IPAddress a, IPAddress b) => a.GetAddressBytes().AsSpan().SequenceEqual(b.GetAddressBytes());

    private static HashSet<string> Names(WebSettings settings)
    {
        var machine = Environment.MachineName;
        return new(["localhost", machine, machine + ".local", .. settings.Hosts], StringComparer.OrdinalIgnoreCase);
    }
}
