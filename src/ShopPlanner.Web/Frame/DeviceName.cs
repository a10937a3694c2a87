using System.Net;
using ShopPlanner.Web.Security;

namespace ShopPlanner.Web.Frame;

/// <summary>Names a browser for the stock ledger, so that a person knows where an entry was made.</summary>
internal static class DeviceName
{
    private static readonly (string Sign, string Name)[] Kinds =
    [
        ("iPad", "iPad"),
        ("iPhone", "iPhone"),
        ("Android", "Android device"),
        ("Windows", "Windows computer"),
        ("Macintosh", "Mac"),
        ("Linux", "Linux computer"),
    ];

    /// <summary>What a device was called when it was signed in; otherwise its kind and address, <c>this computer</c> for the
    /// one that the program runs on.</summary>
    public static string Of(HttpContext context)
    {
        if (Caller.Of(context) is { } device)
            return device.Name;
        var address = context.Connection.RemoteIpAddress;
        if (address is null || IPAddress.IsLoopback(address))
            return "this computer";
        var agent = context.Request.Headers.UserAgent.ToString();
        var kind = Kinds.FirstOrDefault(known => agent.Contains(known.Sign, StringComparison.Ordinal)).Name ?? "device";
        return $"{kind} at {(address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address)}";
    }
}
