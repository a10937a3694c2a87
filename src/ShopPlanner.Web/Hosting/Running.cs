using Microsoft.AspNetCore.Connections;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Web.Hosting;

/// <summary>Opens the shop's data and serves it until stopped.</summary>
internal static class Running
{
    /// <summary>Returns the status to end with: 0, or 1 after one line that says why the program cannot run.</summary>
    public static async Task<int> RunShopAsync(this WebApplication app, WebSettings settings)
    {
        try
        {
            await app.Services.GetRequiredService<ShopDatabase>().OpenAsync();
            app.AnnounceWhenListening();
            await app.RunAsync();
            return 0;
        }
        catch (ShopStartException problem)
        {
            return Say(problem.Message);
        }
        catch (IOException problem) when (problem.InnerException is AddressInUseException)
        {
            return Say($"Port {settings.Port} is taken by another program. Stop that, or choose another port with --port.");
        }
    }

    private static int Say(string line)
    {
        Console.Error.WriteLine(line);
        return 1;
    }
}
