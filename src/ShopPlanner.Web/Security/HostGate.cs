using System.Net;

namespace ShopPlanner.Web.Security;

/// <summary>Refuses requests that name another computer or no address at all, before anything else looks at them.</summary>
internal sealed class HostGate(RequestDelegate next, KnownHosts hosts, ILogger<HostGate> log)
{
    private const int LoggedCharacters = 100;

    /// <summary>Lets the request through or answers it.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var host = context.Request.Host;
        if (host.HasValue && !KnownHosts.IsAddress(host))
            return RefuseOddAsync(context, Shown(host.Value));
        return hosts.Knows(host) ? next(context) : RefuseAsync(context, Shown(host.Host));
    }

    private Task RefuseAsync(HttpContext context, string name)
    {
        log.LogWarning("Refused a request for the host '{Host}': it is not one of this computer's names", name);
        return RefusalPage.AnswerAsync(
            context,
            StatusCodes.Status421MisdirectedRequest,
            "Unknown name",
            Page(WebUtility.HtmlEncode(name))
        );
    }

    private Task RefuseOddAsync(HttpContext context, string host)
    {
        log.LogWarning("Refused a request for the host '{Host}': it is not an address", host);
        return RefusalPage.AnswerAsync(
            context,
            StatusCodes.Status400BadRequest,
            "Not an address",
            OddPage(WebUtility.HtmlEncode(host))
        );
    }

    private static string Shown(string? name)
    {
        var plain = new string([.. (name ?? "").Where(c => !char.IsControl(c))]);
        return plain.Length <= LoggedCharacters ? plain : plain[..LoggedCharacters] + "…";
    }

    private static string OddPage(string host) =>
        $"""
            <h1>This is not an address</h1>
            <p>You opened <b>{host}</b>. An address is a name, or a name, a colon and a port from 0 to 65535.</p>
            <p>Open the address that Shop Planner printed when it started.</p>
            """;

    private static string Page(string name) =>
        $"""
            <h1>Shop Planner doesn't answer to this name</h1>
            <p>You opened <b>{name}</b>, which isn't a name or address of the computer it runs on. Other names are refused,
            because someone else's web page could use one to reach your shop.</p>
            <p>Open the address that Shop Planner printed when it started. If <b>{name}</b> is right, start it with
            <code>--host {name}</code>.</p>
            """;
}
