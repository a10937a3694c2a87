using System.Diagnostics;

namespace ShopPlanner.Cli.Tests;

/// <summary>What a run of the built program gave.</summary>
internal sealed record Run(int Exit, string Output, string Error);

/// <summary>The built program, run as a process of its own.</summary>
internal static class ShopPlannerProgram
{
    public static readonly string Dll = Path.Combine(AppContext.BaseDirectory, "shop-planner.dll");

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    public static Task<Run> RunAsync(params string[] arguments) => RunWithInputAsync("", arguments);

    public static Task<Run> RunWithInputAsync(string input, params string[] arguments) =>
        StartAsync("dotnet", input, [Dll, .. arguments]);

    /// <summary>Any program to its end, its input given whole.</summary>
    public static async Task<Run> StartAsync(string program, string input, params string[] arguments)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(Patience);
        using var process = Start(program, arguments);
        var (output, error) = (
            process.StandardOutput.ReadToEndAsync(patience.Token),
            process.StandardError.ReadToEndAsync(patience.Token)
        );
        await process.StandardInput.WriteAsync(input.AsMemory(), patience.Token);
        process.StandardInput.Close();
        await process.WaitForExitAsync(patience.Token);
        return new Run(process.ExitCode, await output, await error);
    }

    public static Process Start(string program, params string[] arguments) =>
        Process.Start(
            new ProcessStartInfo(program, arguments)
            {
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                UseShellExecute = false,
            }
        )!;

    /// <summary>A file that is somewhere above the tests: <c>shared/tools/verify_plan.py</c> in a folder beside the repository.</summary>
    public static string? FindAbove(string relative)
    {
        for (var folder = AppContext.BaseDirectory; folder is not null; folder = Path.GetDirectoryName(folder))
            if (File.Exists(Path.Combine(folder, relative)))
                return Path.Combine(folder, relative);
        return null;
    }
}
