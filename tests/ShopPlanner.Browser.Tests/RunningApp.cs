using System.Diagnostics;
using System.Text.RegularExpressions;

namespace ShopPlanner.Browser.Tests;

/// <summary>
/// The real program as its own process, on a free port, with a data folder of its own that is deleted afterwards.
/// </summary>
public sealed partial class RunningApp : IAsyncDisposable
{
    private static readonly TimeSpan StartTimeout = TimeSpan.FromMinutes(3);
    private readonly string[] extra;
    private readonly IReadOnlyDictionary<string, string> environment;
    private Process process;

    private RunningApp(Process process, string dataFolder, string[] extra, IReadOnlyDictionary<string, string> environment)
    {
        (this.process, DataFolder, this.extra, this.environment) = (process, dataFolder, extra, environment);
    }

    public string DataFolder { get; }

    public Uri Address { get; private set; } = new("http://localhost");

    /// <summary>Starts the program with an empty shop.</summary>
    public static Task<RunningApp> StartEmptyAsync(CancellationToken cancel) =>
        StartAsync(new Dictionary<string, string>(), [], cancel);

    /// <summary>Starts the program with the demo.</summary>
    public static Task<RunningApp> StartAsync(CancellationToken cancel) => StartAsync(new Dictionary<string, string>(), cancel);

    /// <summary>Starts the program with the demo and settings from the environment.</summary>
    public static Task<RunningApp> StartAsync(IReadOnlyDictionary<string, string> environment, CancellationToken cancel) =>
        StartAsync(environment, ["--demo"], cancel);

    /// <summary>Starts the program with the demo and more options.</summary>
    /// <param name="prepare">Puts something in the data folder before the program starts.</param>
    /// <param name="options">Of the command line.</param>
    /// <param name="cancel">Stops waiting.</param>
    public static Task<RunningApp> StartAsync(Action<string> prepare, string[] options, CancellationToken cancel) =>
        StartAsync(new Dictionary<string, string>(), ["--demo", .. options], cancel, prepare);

    /// <summary>Starts the program without the demo.</summary>
    /// <param name="prepare">Puts something in the data folder before the program starts.</param>
    /// <param name="cancel">Stops waiting.</param>
    public static Task<RunningApp> StartEmptyAsync(Action<string> prepare, CancellationToken cancel) =>
        StartAsync(new Dictionary<string, string>(), [], cancel, prepare);

    private static async Task<RunningApp> StartAsync(
        IReadOnlyDictionary<string, string> environment,
        string[] extra,
        CancellationToken cancel,
        Action<string>? prepare = null
    )
    {
        var data = Directory.CreateTempSubdirectory("shop-planner-browser-").FullName;
        if (prepare is not null)
            prepare(data);
        else if (extra.Contains("--demo"))
            await DemoData.CopyToAsync(data);
        var app = new RunningApp(Begin(data, 0, extra, environment), data, extra, environment);
        app.Address = await app.ReadAddressAsync(cancel);
        return app;
    }

    /// <summary>Ends the program as a power cut does.</summary>
    public async Task KillAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    /// <summary>Starts the program again on its data and its port.</summary>
    public async Task StartAgainAsync(CancellationToken cancel)
    {
        process.Dispose();
        process = Begin(DataFolder, Address.Port, extra, environment);
        Address = await ReadAddressAsync(cancel);
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
        Directory.Delete(DataFolder, recursive: true);
    }

    private static Process Begin(string data, int port, string[] extra, IReadOnlyDictionary<string, string> environment)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "ShopPlanner.Web.dll");
        var start = new ProcessStartInfo(
            "dotnet",
            [program, "--data", data, "--port", $"{port}", "--only-this-computer", .. extra]
        )
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = AppContext.BaseDirectory,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        return Process.Start(start)!;
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
        var end = process.HasExited ? $"ended with status {process.ExitCode}" : $"still ran after {StartTimeout}";
        lock (said)
            throw new InvalidOperationException($"The program printed no address and {end}:\n" + string.Join('\n', said));
    }

    [GeneratedRegex("(?<address>http://localhost:[0-9]+)")]
    private static partial Regex Printed();
}
