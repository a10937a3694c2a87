using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.ResponseCompression;
using MudBlazor.Services;
using ShopPlanner.Web.Features.Publish;
using ShopPlanner.Web.Features.Shop;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Look;
using ShopPlanner.Web.Security;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web;

/// <summary>Pages and what they need.</summary>
internal static class PagesSetup
{
    // Rows pasted from a spreadsheet travel in one message.
    private const int LargestMessage = 2 * 1024 * 1024;
    private const string RefusedForm =
        "That was not done, and nothing was changed ({0}). Go back, reload the page and try again.";

    private static readonly string[] Light = [Links.Bench, "/assets/styles", "/assets/scripts", "/scripts"];

    /// <summary>Registers what pages need.</summary>
    /// <param name="services">The program's services.</param>
    /// <param name="circuits">Settings of live connections, such as <c>DisconnectedCircuitRetentionPeriod</c>.</param>
    public static void AddPages(this IServiceCollection services, IConfiguration circuits)
    {
        services.Configure<CircuitOptions>(circuits);
        services
            .AddRazorComponents()
            .AddInteractiveServerComponents()
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = LargestMessage);
        services.AddMudServices();
        services.AddScoped<Notices>();
        services.AddScoped<LookState>();
        services.AddSingleton<IconShelf>();
        services.AddResponseCompression(Compress);
        services.AddSingleton<PhotoShelf>();
        services.AddSingleton<OpenPages>();
        services.AddSingleton<CircuitHandler>(given => given.GetRequiredService<OpenPages>());
    }

    // Plain pages and what they load, for a shop's Wi-Fi. Over https too: nothing that is sent back is chosen by a stranger, and
    // the tokens of forms are drawn anew for each page, so that their lengths tell nothing.
    private static void Compress(ResponseCompressionOptions options)
    {
        options.EnableForHttps = true;
        options.MimeTypes = ["text/html", "text/css", "text/javascript", "application/json"];
    }

    private static bool IsForTheShop(HttpContext context) =>
        Light.Any(path => context.Request.Path.StartsWithSegments(path, StringComparison.OrdinalIgnoreCase));

    /// <summary>What happens around pages: failures, unknown addresses, forms.</summary>
    public static void UsePages(this WebApplication app)
    {
        app.UseWhen(IsForTheShop, light => light.UseResponseCompression());
        app.UseExceptionHandler("/error", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        // What was sent and refused is answered here, in a line: run again as a page, it would be refused there too.
        app.UseWhen(context => !IsLooking(context), sent => sent.UseStatusCodePages("text/plain; charset=utf-8", RefusedForm));
        app.Use(AnswerHeadAsGet);
        // Named here, not left to the framework, which would choose the endpoint before a HEAD is taken for a GET.
        app.UseRouting();
        app.UseAntiforgery();
    }

    // Pages and files are mapped for GET alone. The server remembers how it was asked and leaves the body out.
    private static Task AnswerHeadAsGet(HttpContext context, RequestDelegate next)
    {
        if (HttpMethods.IsHead(context.Request.Method) && !context.Request.Path.StartsWithSegments(OriginGate.LiveConnection))
            context.Request.Method = HttpMethods.Get;
        return next(context);
    }

    private static bool IsLooking(HttpContext context) =>
        HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method);

    /// <summary>Maps files and pages. The frame rule is sent with the other security headers.</summary>
    public static void MapPages(this WebApplication app)
    {
        app.MapStaticAssets();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(mode => mode.ContentSecurityFrameAncestorsPolicy = null);
    }
}
