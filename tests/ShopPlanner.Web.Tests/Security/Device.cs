using System.Net;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace ShopPlanner.Web.Tests.Security;

/// <summary>A browser somewhere in the network, without scripts: it keeps one cookie, and names the page's origin when it sends
/// a form.</summary>
internal sealed class Device(ShopServer shop, string address = "192.168.1.20")
{
    private readonly Dictionary<string, string> cookies = new(StringComparer.Ordinal);

    /// <summary>The lines that set cookies, as they came.</summary>
    public List<string> Set { get; } = [];

    /// <summary>The cookies that it sends.</summary>
    public IReadOnlyDictionary<string, string> Cookies => cookies;

    /// <summary>Headers that it sends besides.</summary>
    public Dictionary<string, string> Headers { get; } = [];

    /// <summary>The scheme it speaks.</summary>
    public string Scheme { get; init; } = "http";

    public Task<Seen> GetAsync(string path) => SendAsync("GET", path, null);

    public Task<Seen> PostAsync(string path, params (string Name, string Value)[] fields) =>
        SendAsync("POST", path, string.Join('&', fields.Select(one => $"{one.Name}={WebUtility.UrlEncode(one.Value)}")));

    public async Task<Seen> SendAsync(string method, string path, string? form)
    {
        var context = await shop.SendAsync(asked =>
        {
            asked.Connection.RemoteIpAddress = IPAddress.Parse(address);
            var parts = path.Split('?');
            (asked.Request.Method, asked.Request.Scheme) = (method, Scheme);
            (asked.Request.Path, asked.Request.Host) = (new PathString(parts[0]), new HostString("localhost"));
            asked.Request.QueryString = parts.Length > 1 ? new QueryString("?" + parts[1]) : QueryString.Empty;
            asked.Request.Headers.Accept = "text/html";
            foreach (var (name, value) in Headers)
                asked.Request.Headers[name] = value;
            if (cookies.Count > 0)
                asked.Request.Headers.Cookie = string.Join("; ", cookies.Select(one => $"{one.Key}={one.Value}"));
            if (form is null)
                return;
            asked.Request.Headers.Origin = Scheme + "://localhost";
            asked.Request.ContentType = "application/x-www-form-urlencoded";
            asked.Request.Body = new MemoryStream(Encoding.UTF8.GetBytes(form));
            asked.Request.ContentLength = form.Length;
        });
        foreach (var line in context.Response.Headers.SetCookie)
            Keep(line!);
        using var reader = new StreamReader(context.Response.Body);
        return new(
            context.Response.StatusCode,
            context.Response.Headers.Location.ToString(),
            await reader.ReadToEndAsync(ShopServer.Cancel),
            context.Response.Headers
        );
    }

    private void Keep(string line)
    {
        Set.Add(line);
        var pair = line.Split(';')[0].Split('=', 2);
        if (pair[1].Length == 0)
            cookies.Remove(pair[0]);
        else
            cookies[pair[0]] = pair[1];
    }
}

/// <summary>An answer.</summary>
internal sealed record Seen(int Status, string To, string Body, IHeaderDictionary Headers);
