using System.Diagnostics;

namespace ShopPlanner.Web.Tests.Hosting;

/// <summary>The real program as a process of its own, and everything it says.</summary>
internal sealed class StartedProgram : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly Process process;
    private readonly Task<string> errors;

    public StartedProgram(params string[] args)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "ShopPlanner.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program, .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        process = Process.Start(start)!;
        errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
    }

    public int Id => process.Id;

    /// <summary>The next line on standard output; null at its end.</summary>
    public async Task<string?> ReadLineAsync() =>
        await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(Patience);

    /// <summary>Waits for the end.</summary>
    public async Task<(int Exit, string Output, string Error)> EndAsync()
    {
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience);
        return (process.ExitCode, await output, await errors);
    }

    public void Dispose()
    {
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        process.Dispose();
    }
}
