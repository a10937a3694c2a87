using System.Net;
using System.Security.Claims;
using ShopPlanner.Services.Access;

namespace ShopPlanner.Web.Security;

/// <summary>Who sent a request.</summary>
internal static class Caller
{
    private static readonly object Key = new(),
        Stranger = new();

    /// <summary>The device that is signed in; null where none is.</summary>
    public static AccessDevice? Of(HttpContext context) => context.Items[Key] as AccessDevice;

    /// <summary>Notes the device, for pages and for the live connection.</summary>
    public static void Note(HttpContext context, AccessDevice device)
    {
        context.Items[Key] = device;
        context.User = new ClaimsPrincipal(
            new ClaimsIdentity([new Claim(ClaimTypes.NameIdentifier, device.Id.ToString())], "device")
        );
    }

    /// <summary>Notes that nobody knows who sent the request.</summary>
    public static void NoteStranger(HttpContext context) => context.Items[Stranger] = true;

    /// <summary>Whether nobody knows who sent the request, in a shop where people sign in: they are told nothing of it.</summary>
    public static bool IsStranger(HttpContext context) => context.Items.ContainsKey(Stranger);

    /// <summary>The device of a live connection; null where none is signed in.</summary>
    public static Guid? Of(ClaimsPrincipal user) =>
        Guid.TryParse(user.FindFirst(ClaimTypes.NameIdentifier)?.Value, out var id) ? id : null;

    /// <summary>Whether the browser runs on this computer. What a proxy passes on comes from elsewhere, unless the proxy was
    /// named and says who sent it (<see cref="SecuritySetup"/>).</summary>
    public static bool IsHere(HttpContext context) =>
        context.Connection.RemoteIpAddress is not { } address
        || (IPAddress.IsLoopback(address) && !Proxied.Any(context.Request.Headers.ContainsKey));

    /// <summary>Where a request came from, for counting tries: an address, or its network where addresses are many.</summary>
    public static string From(HttpContext context)
    {
        if (context.Connection.RemoteIpAddress is not { } address)
            return "here";
        var bytes = (address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address).GetAddressBytes();
        return Convert.ToHexStringLower(bytes.Length > 8 ? bytes.AsSpan(0, 8) : bytes);
    }

    // Left over where the sender is no proxy that was named.
    private static readonly string[] Proxied =
    [
        "X-Forwarded-For",
        "X-Forwarded-Host",
        "X-Forwarded-Proto",
        "Forwarded",
        "X-Real-IP",
    ];
}
