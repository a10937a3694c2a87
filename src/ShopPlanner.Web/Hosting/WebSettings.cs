using System.Net;

namespace ShopPlanner.Web.Hosting;

/// <summary>How the program was asked to run; every value has been checked.</summary>
/// <param name="DataFolder">Full path of the folder that holds the shop's data.</param>
/// <param name="Demo">True to fill an empty data folder with the demo.</param>
/// <param name="Port">Port to listen on; 0 for any free one.</param>
/// <param name="Urls">Addresses to listen on instead of <paramref name="Port"/>; empty for none.</param>
/// <param name="OnlyThisComputer">True to listen on the loopback addresses alone.</param>
/// <param name="Hosts">More names that the program may be opened by.</param>
/// <param name="AsksHealth">Whether to ask a program that runs on <paramref name="Port"/> instead of starting one.</param>
/// <param name="HttpsPort">Port to listen on with the shop's own certificate besides; null for none, 0 for any free one.</param>
/// <param name="SecondBackups">Full path of another folder that every backup is copied to; null where Setup says.</param>
public sealed record WebSettings(
    string DataFolder,
    bool Demo,
    int Port,
    IReadOnlyList<string> Urls,
    bool OnlyThisComputer,
    IReadOnlyList<string> Hosts,
    bool AsksHealth = false,
    int? HttpsPort = null,
    string? SecondBackups = null
)
{
    /// <summary>Where the program listens unless told otherwise.</summary>
    public const int DefaultPort = 5080;

    /// <summary>Proxies that are believed when they say who sent a request; empty for none.</summary>
    public IReadOnlyList<IPAddress> Proxies { get; init; } = [];

    /// <summary>A server's database that keeps the shop; null for a file in the data folder.</summary>
    public string? Database { get; init; }

    /// <summary>True to forget the owner's account at this start, after a lost password.</summary>
    public bool ForgetsOwner { get; init; }
}
