using ShopPlanner.Services.Access;
using ShopPlanner.Services.Opening;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Web.Hosting;

/// <summary>Opens the shop's data and serves it until stopped.</summary>
internal static class Running
{
    /// <summary>The status after a start that may succeed later: the port is taken, the network is not up yet.</summary>
    public const int CannotListen = 1;

    /// <summary>The status after a start that fails again until somebody mends the data folder.</summary>
    public const int CannotOpen = 3;

    /// <summary>Returns the status to end with: 0, or another after one line that says why the program cannot run.</summary>
    public static async Task<int> RunShopAsync(this WebApplication app, WebSettings settings)
    {
        try
        {
            await app.Services.GetRequiredService<ShopDatabase>().OpenAsync();
            ReadAccess(app.Services.GetRequiredService<IAccessService>(), settings);
            app.AnnounceWhenListening(settings);
            await app.StartAsync();
        }
        catch (ShopStartException problem)
        {
            return Say(problem.Message, CannotOpen);
        }
        catch (Exception problem) when (ListenRefusal.Explain(problem, settings) is { } line)
        {
            return Say(line, CannotListen);
        }

        await app.WaitForShutdownAsync();
        return 0;
    }

    // Read before anybody is served: where it cannot be read, nobody is.
    private static void ReadAccess(IAccessService access, WebSettings settings)
    {
        if (access.HasOwner && settings.ForgetsOwner && access.ForgetOwner() is { Ok: false } outcome)
            throw new ShopStartException(outcome.Faults[0].Message + ".");
    }

    /// <summary>Says a line on standard error and returns the status.</summary>
    internal static int Say(string line, int status)
    {
        Console.Error.WriteLine(line);
        return status;
    }
}
