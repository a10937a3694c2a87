using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;

namespace ShopPlanner.Web.Hosting;

/// <summary>Says in one line why the web server cannot listen where it was asked to.</summary>
internal static class ListenRefusal
{
    /// <summary>Returns the line, or null when the problem is not about listening.</summary>
    public static string? Explain(Exception problem, WebSettings settings) =>
        problem switch
        {
            IOException { InnerException: AddressInUseException } => Taken(problem, settings),
            SocketException { SocketErrorCode: SocketError.AddressNotAvailable } => NotOwn(settings),
            SocketException { SocketErrorCode: SocketError.AccessDenied } => NotAllowed(settings),
            SocketException socket => $"{Where(settings)} can't be used: {OneLine(socket)}.",
            InvalidOperationException when Https(settings) is { } url =>
                $"--urls: '{url}' needs a certificate: {OneLine(problem)} Write http:// and put a proxy in front for HTTPS.",
            // Kestrel says so for localhost when neither of its two addresses can be listened on.
            IOException when problem.Message.StartsWith("Failed to bind", StringComparison.Ordinal) =>
                $"{Where(settings)} can't be used: {OneLine(problem)}",
            _ => null,
        };

    private static string Taken(Exception problem, WebSettings settings)
    {
        if (settings.Urls.Count == 0)
            return $"Port {settings.Port} is in use by another program. Stop that program, or choose another port with --port.";
        var taken = settings.Urls.FirstOrDefault(url =>
            problem.Message.Contains($":{Parsed(url).Port}:", StringComparison.Ordinal)
        );
        return $"{Where(settings, taken)} is in use by another program. Stop that program, or choose another port.";
    }

    private static string NotOwn(WebSettings settings) =>
        $"{Where(settings, settings.Urls.FirstOrDefault(IsStrange))} can't be used: this computer has no such address. "
        + "Write one of its own, or '*' for all.";

    private static string NotAllowed(WebSettings settings) =>
        $"{Where(settings)} is not allowed for user '{Environment.UserName}'. Choose port 1024 or higher.";

    private static string Where(WebSettings settings, string? url = null) =>
        settings.Urls.Count == 0 ? $"Port {settings.Port}" : $"--urls: '{url ?? string.Join(';', settings.Urls)}'";

    private static string? Https(WebSettings settings) =>
        settings.Urls.FirstOrDefault(url => url.StartsWith("https:", StringComparison.OrdinalIgnoreCase));

    private static bool IsStrange(string url) =>
        IPAddress.TryParse(Parsed(url).Host.Trim('[', ']'), out var address)
        && !IPAddress.IsLoopback(address)
        && !address.Equals(IPAddress.Any)
        && !address.Equals(IPAddress.IPv6Any)
        && !new LanAddresses(TimeProvider.System).All().Contains(address);

    private static Uri Parsed(string url) => new(WebOptions.Spelled(url));

    private static string OneLine(Exception problem) => problem.Message.ReplaceLineEndings(" ");
}
