using System.Diagnostics;
using System.Text.RegularExpressions;

namespace ShopPlanner.Browser.Tests;

/// <summary>The real program as its own process, on a free port, with a data folder of its own that is deleted afterwards.</summary>
public sealed partial class RunningApp : IAsyncDisposable
{
    private static readonly TimeSpan StartTimeout = TimeSpan.FromSeconds(60);
    private readonly Process process;

    private RunningApp(Process process, string dataFolder)
    {
        this.process = process;
        DataFolder = dataFolder;
    }

    public string DataFolder { get; }

    public Uri Address { get; private set; } = new("http://localhost");

    public static async Task<RunningApp> StartAsync(CancellationToken cancel, params string[] extra)
    {
        var data = Directory.CreateTempSubdirectory("shop-planner-browser-").FullName;
        var program = Path.Combine(AppContext.BaseDirectory, "ShopPlanner.Web.dll");
        var start = new ProcessStartInfo(
            "dotnet",
            [program, "--demo", "--data", data, "--port", "0", "--only-this-computer", .. extra]
        )
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = AppContext.BaseDirectory,
        };
        var app = new RunningApp(Process.Start(start)!, data);
        app.Address = await app.ReadAddressAsync(cancel);
        return app;
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
        Directory.Delete(DataFolder, recursive: true);
    }

    // The address the program prints is part of what is tested: a builder reads it off the terminal.
    private async Task<Uri> ReadAddressAsync(CancellationToken cancel)
    {
        var found = new TaskCompletionSource<Uri>(TaskCreationOptions.RunContinuationsAsynchronously);
        var said = new List<string>();
        void Read(string? line)
        {
            if (line is null)
                return;
            lock (said)
                said.Add(line);
            if (Printed().Match(line) is { Success: true } match)
                found.TrySetResult(new Uri(match.Groups["address"].Value));
        }

        process.OutputDataReceived += (_, line) => Read(line.Data);
        process.ErrorDataReceived += (_, line) => Read(line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        if (await Task.WhenAny(found.Task, process.WaitForExitAsync(cancel), Task.Delay(StartTimeout, cancel)) == found.Task)
            return await found.Task;
        lock (said)
            throw new InvalidOperationException("The program printed no address:\n" + string.Join('\n', said));
    }

    [GeneratedRegex("(?<address>http://localhost:[0-9]+)")]
    private static partial Regex Printed();
}
