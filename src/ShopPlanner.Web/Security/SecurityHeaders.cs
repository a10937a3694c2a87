using System.Security.Cryptography;

namespace ShopPlanner.Web.Security;

/// <summary>Headers that tell the browser what a page of this program may do.</summary>
internal sealed class SecurityHeaders(RequestDelegate next)
{
    // What stands in place of the proxy's own header once it was believed.
    private const string PassedOn = "X-Original-Proto";

    private static readonly object NonceKey = new();

    /// <summary>The page's own one-time word for its import map, the only inline script there is.</summary>
    public static string Nonce(HttpContext context) => (string)context.Items[NonceKey]!;

    /// <summary>Sets the headers and goes on.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var nonce = Convert.ToBase64String(RandomNumberGenerator.GetBytes(16));
        context.Items[NonceKey] = nonce;
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy(nonce);
        headers.XContentTypeOptions = "nosniff";
        // Not no-referrer: with that the browser sends "Origin: null" with our own forms, and they would be refused.
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        // Only behind a proxy that speaks https: with the shop's own certificate http is served beside it, under the same name.
        if (
            context.Request.IsHttps
            && headers.StrictTransportSecurity.Count == 0
            && context.Request.Headers.ContainsKey(PassedOn)
        )
            headers.StrictTransportSecurity = "max-age=31536000";
        return next(context);
    }

    // A page names its base address ('/'), so that addresses in it hold at any depth: base-uri is the server itself, not none.
    // Style sheets come from the server alone. Style attributes are allowed: swatches and bays are drawn by them, and the
    // component library places its pop-ups and fades its notes so. An attribute styles one element and reaches no other address
    // than img-src allows.
    private static string Policy(string nonce) =>
        $"default-src 'self'; script-src 'self' 'nonce-{nonce}'; style-src 'self'; style-src-attr 'unsafe-inline'; "
        + "img-src 'self' data:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'; "
        + "connect-src 'self'";
}
