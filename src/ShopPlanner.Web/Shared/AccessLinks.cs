using Microsoft.AspNetCore.WebUtilities;

namespace ShopPlanner.Web.Shared;

/// <summary>The addresses of signing in, pairing and sharing.</summary>
public static class AccessLinks
{
    /// <summary>Who may open the shop.</summary>
    public const string Page = "/shop/access";

    /// <summary>Making the owner's account.</summary>
    public const string Owner = "/owner";

    /// <summary>Signing in as the owner.</summary>
    public const string SignIn = "/sign-in";

    /// <summary>Signing in, and then to the page that was asked for.</summary>
    public static string SignInFor(string page) => QueryHelpers.AddQueryString(SignIn, "to", page);

    /// <summary>Signing this browser out.</summary>
    public const string SignOut = "/sign-out";

    /// <summary>Pairing a tablet or phone.</summary>
    public const string Pair = "/pair";

    /// <summary>Plans that were shared; the link's secret follows.</summary>
    public const string Shared = "/shared";

    /// <summary>A shared plan's packet.</summary>
    public static string SharedPacket(string token) => $"{Shared}/{token}/packet.pdf";
}
