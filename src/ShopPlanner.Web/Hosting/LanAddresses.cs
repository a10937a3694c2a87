using System.Net;
using System.Net.Sockets;
using ShopPlanner.Services.Certificates;

namespace ShopPlanner.Web.Hosting;

/// <summary>
/// The addresses of this computer's own network cards. A laptop changes networks while the program runs, so they are asked for
/// again after a while.
/// </summary>
internal sealed class LanAddresses(TimeProvider clock)
{
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(20);
    private readonly Lock gate = new();
    private IReadOnlyList<IPAddress> known = [];
    private long? asked;

    /// <summary>All addresses, those that lead to a gateway first.</summary>
    public IReadOnlyList<IPAddress> All()
    {
        lock (gate)
        {
            if (asked is { } then && clock.GetElapsedTime(then) < Fresh)
                return known;
            known = OwnNames.Addresses();
            asked = clock.GetTimestamp();
            return known;
        }
    }

    /// <summary>The address to type on a tablet, or null when there is no network.</summary>
    public IPAddress? ForTablet() => All().FirstOrDefault(address => address.AddressFamily == AddressFamily.InterNetwork);
}
