using ShopPlanner.Services;
using ShopPlanner.Services.Backups;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;
using ShopPlanner.Web.Features.Access;
using ShopPlanner.Web.Features.Bench;
using ShopPlanner.Web.Features.Bench.Outbox;
using ShopPlanner.Web.Features.Book;
using ShopPlanner.Web.Features.Files;
using ShopPlanner.Web.Features.Idea;
using ShopPlanner.Web.Features.Paper;
using ShopPlanner.Web.Features.Plans;
using ShopPlanner.Web.Features.Projects;
using ShopPlanner.Web.Features.Publish;
using ShopPlanner.Web.Features.Shopping;
using ShopPlanner.Web.Features.Stores;
using ShopPlanner.Web.Features.Weekends;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Hosting;
using ShopPlanner.Web.Security;

namespace ShopPlanner.Web;

/// <summary>The web program.</summary>
public static class Program
{
    /// <summary>Reads the command line, opens the shop and serves it until stopped.</summary>
    public static async Task<int> Main(string[] args)
    {
        var reading = WebOptions.Read(args);
        if (reading.Settings is not { } settings)
            return reading.ExitCode;
        if (settings.AsksHealth)
            return await HealthCheck.AskAsync(settings.Port);
        try
        {
            int status;
            bool again;
            do
            {
                await using var app = Build(settings);
                status = await app.RunShopAsync(settings);
                // A restore asked for in Setup is done by a start, before anything else opens the shop.
                again = status == 0 && app.Services.GetRequiredService<IRestoreService>().IsAsked;
                settings = settings with { ForgetsOwner = false };
            } while (again);
            return status;
        }
        catch (ShopStartException problem)
        {
            // The certificate is read while the server is put together.
            return Running.Say(problem.Message, Running.CannotOpen);
        }
    }

    /// <summary>The program, ready to run.</summary>
    /// <param name="settings">How it was asked to run.</param>
    /// <param name="change">What a test puts in another's place.</param>
    internal static WebApplication Build(WebSettings settings, Action<WebApplicationBuilder>? change = null)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.ListenAsAsked(settings);
        builder.Services.AddSecurity(settings);
        builder.Services.AddShopPlanner(
            new ServicesOptions(settings.DataFolder, settings.Demo, settings.SecondBackups) { Database = settings.Database }
        );
        builder.Services.AddPages(builder.Configuration.GetSection("Circuits"));
        change?.Invoke(builder);

        var app = builder.Build();
        app.UseSecurity(settings);
        app.UsePages();
        app.MapPages();
        app.MapDrawingStyles();
        app.MapPlanDownloads();
        app.MapStoreDownloads();
        app.MapBookDownloads();
        app.MapProjectDownloads();
        app.MapIdeaDownloads();
        app.MapWeekendDownloads();
        app.MapPublishDownloads();
        app.MapFilesDownloads();
        app.MapHealth();
        app.MapBench();
        app.MapBenchOutbox();
        app.MapShopping();
        app.MapAccess();
        app.MapShares();
        app.MapPaper();
        return app;
    }
}
