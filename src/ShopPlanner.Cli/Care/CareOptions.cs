using System.CommandLine;
using ShopPlanner.Services;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Cli.Care;

/// <summary>What the commands that look after a data folder have in common.</summary>
internal static class CareOptions
{
    /// <summary>Returns the option that names the data folder.</summary>
    public static Option<string?> Data() =>
        new("--data")
        {
            Description = "The shop's data folder. Default: a folder in your local application data.",
            HelpName = "DIR",
        };

    /// <summary>Does work on the folder; what a person must mend is said in one line.</summary>
    public static async Task<int> RunAsync(string? data, Func<ShopCare, Task<int>> work)
    {
        try
        {
            await using var care = new ShopCare(
                data is { Length: > 0 } given ? Path.GetFullPath(given) : ShopFolder.Default(demo: false),
                TimeProvider.System
            );
            return await work(care);
        }
        catch (ShopStartException problem)
        {
            throw new Complaint(problem.Message);
        }
    }
}
