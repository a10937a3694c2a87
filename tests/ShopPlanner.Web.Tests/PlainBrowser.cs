using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace ShopPlanner.Web.Tests;

/// <summary>
/// A browser without scripts: it keeps cookies, names the page's origin when it sends a form, and follows nothing by itself.
/// </summary>
internal sealed class PlainBrowser(HttpMessageHandler server) : IDisposable
{
    private static readonly Uri Home = new("http://localhost/");
    private readonly HttpClient client = new(server) { BaseAddress = Home };
    private readonly CookieContainer jar = new();

    private static CancellationToken Cancel => ShopServer.Cancel;

    public Task<HttpResponseMessage> GetAsync(string address) => SendAsync(new HttpRequestMessage(HttpMethod.Get, address));

    /// <summary>A page that is there.</summary>
    public async Task<IHtmlDocument> OpenAsync(string address)
    {
        using var answer = await GetAsync(address);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address} answered {answer.StatusCode}");
        return await ReadAsync(answer);
    }

    /// <summary>Sends a form as it stands.</summary>
    public Task<HttpResponseMessage> SubmitAsync(IHtmlFormElement form) =>
        PostAsync(form.GetAttribute("action")!, FieldsOf(form));

    public Task<HttpResponseMessage> PostAsync(string address, IEnumerable<KeyValuePair<string, string>> fields) =>
        SendFormAsync(address, new FormUrlEncodedContent(fields));

    /// <summary>Sends any body, as a page of the program itself.</summary>
    public Task<HttpResponseMessage> SendFormAsync(string address, HttpContent content)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = content };
        request.Headers.Add("Origin", "http://localhost");
        return SendAsync(request);
    }

    public static async Task<IHtmlDocument> ReadAsync(HttpResponseMessage answer) =>
        new HtmlParser().ParseDocument(await answer.Content.ReadAsStringAsync(Cancel));

    /// <summary>What a browser would send: fields with a name, boxes and choices only when ticked.</summary>
    public static List<KeyValuePair<string, string>> FieldsOf(IHtmlFormElement form) =>
        [
            .. form.QuerySelectorAll<IHtmlInputElement>("input[name]")
                .Where(input => input.Type is not ("checkbox" or "radio") || input.IsChecked)
                .Select(input => KeyValuePair.Create(input.Name!, input.Value)),
        ];

    public void Dispose() => client.Dispose();

    private async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request)
    {
        if (jar.GetCookieHeader(Home) is { Length: > 0 } cookies)
            request.Headers.Add("Cookie", cookies);
        var answer = await client.SendAsync(request, Cancel);
        if (answer.Headers.TryGetValues("Set-Cookie", out var set))
            foreach (var cookie in set)
                jar.SetCookies(Home, cookie);
        return answer;
    }
}
