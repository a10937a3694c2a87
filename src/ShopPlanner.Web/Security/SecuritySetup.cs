using System.Net;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HttpOverrides;
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
        services.AddScoped<CircuitHandler, CircuitWatch>();
        services.Configure<ForwardedHeadersOptions>(options => Trust(options, settings.Proxies));
    }

    /// <summary>The gates, first in line.</summary>
    public static void UseSecurity(this IApplicationBuilder app, WebSettings settings)
    {
        if (settings.Proxies.Count > 0)
            app.UseForwardedHeaders();
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<HostGate>();
        app.UseMiddleware<OriginGate>();
        app.UseMiddleware<AccessGate>();
    }

    // Of a proxy that was named: who sent the request, and whether that was over https. Nobody else is believed.
    private static void Trust(ForwardedHeadersOptions options, IReadOnlyList<IPAddress> proxies)
    {
        options.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
        options.KnownIPNetworks.Clear();
        options.KnownProxies.Clear();
        foreach (var proxy in proxies)
            options.KnownProxies.Add(proxy);
    }

    private static void Name(AntiforgeryOptions options)
    {
        options.Cookie.Name = FormsCookie;
        options.Cookie.SameSite = SameSiteMode.Strict;
        options.Cookie.HttpOnly = true;
        options.SuppressXFrameOptionsHeader = true;
    }
}
