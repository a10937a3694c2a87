using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.DataProtection;
using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Security;

/// <summary>Who may open the program and what a page may do.</summary>
internal static class SecuritySetup
{
    /// <summary>
    /// Name of the cookie that forms are checked against; of this program alone, because cookies are shared by all ports of one
    /// computer.
    /// </summary>
    public const string FormsCookie = "shop-planner-forms";

    /// <summary>
    /// Registers the gates, and keeps the keys that sign forms in the data folder, so that a restart breaks no open page.
    /// </summary>
    public static void AddSecurity(this IServiceCollection services, WebSettings settings)
    {
        services.AddSingleton(settings);
        services.AddSingleton<LanAddresses>();
        services.AddSingleton<KnownHosts>();
        services
            .AddDataProtection()
            .SetApplicationName("ShopPlanner")
            .PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(settings.DataFolder, "keys")));
        services.AddAntiforgery(Name);
    }

    /// <summary>The gates, first in line.</summary>
    public static void UseSecurity(this IApplicationBuilder app)
    {
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<HostGate>();
        app.UseMiddleware<OriginGate>();
    }

    private static void Name(AntiforgeryOptions options)
    {
        options.Cookie.Name = FormsCookie;
        options.Cookie.SameSite = SameSiteMode.Strict;
        options.Cookie.HttpOnly = true;
        options.SuppressXFrameOptionsHeader = true;
    }
}
