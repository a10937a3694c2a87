using System.Net;
using System.Net.NetworkInformation;

namespace ShopPlanner.Services.Certificates;

/// <summary>What this computer is called and where it is reached.</summary>
public static class OwnNames
{
    /// <summary>The computer's name, as typed on its network, with and without <c>.local</c>, and <c>localhost</c>.</summary>
    public static IReadOnlyList<string> Names() =>
        ["localhost", Environment.MachineName.ToLowerInvariant(), Environment.MachineName.ToLowerInvariant() + ".local"];

    /// <summary>The addresses of its network cards, those that lead to a gateway first; without the loopback ones.</summary>
    public static IReadOnlyList<IPAddress> Addresses() =>
        [
            .. NetworkInterface
                .GetAllNetworkInterfaces()
                .Where(card =>
                    card.OperationalStatus == OperationalStatus.Up && card.NetworkInterfaceType != NetworkInterfaceType.Loopback
                )
                .Select(card => card.GetIPProperties())
                .OrderByDescending(card => card.GatewayAddresses.Count)
                .SelectMany(card => card.UnicastAddresses.Select(unicast => unicast.Address)),
        ];
}
