using System.Diagnostics;
using System.Text;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cli.Tests;

/// <summary>A person at a terminal sees cost, bound and gap, and Ctrl-C gives the best plan so far.</summary>
public sealed class InterruptTests : IDisposable
{
    private const string Terminal = "/usr/bin/script";
    private const char CtrlC = '\u0003';

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    // At once, and after solvers have been at work that know of Ctrl-C themselves.
    [Theory, InlineData(0), InlineData(3)]
    public async Task Ctrl_C_writes_the_best_so_far(int seconds)
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && File.Exists(Terminal),
            "needs Linux with script (util-linux) to stand in for a terminal"
        );
        var request = scratch.Write("r.json", Requests.Hard());
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromMinutes(2));
        // The shell makes way for the program: one that waited for it would itself end by the interrupt. A test run in the background
        // may have been told to ignore interrupts, which programs inherit.
        using var process = ShopPlannerProgram.Start(
            "/usr/bin/env",
            "--default-signal=INT",
            "SHELL=/bin/sh",
            Terminal,
            "-qfec",
            $"exec dotnet '{ShopPlannerProgram.Dll}' cut '{request}' -o '{scratch["p.json"]}' --seconds 3600",
            "/dev/null"
        );
        Assert.Contains("gap", await ReadUntil(process, "gap", patience.Token), StringComparison.Ordinal);
        var rest = process.StandardOutput.ReadToEndAsync(patience.Token);
        await Task.Delay(TimeSpan.FromSeconds(seconds), patience.Token);
        await process.StandardInput.WriteAsync(CtrlC);
        await process.StandardInput.FlushAsync(patience.Token);
        await rest;
        await process.WaitForExitAsync(patience.Token);
        Assert.Equal(0, process.ExitCode);
        Check(await File.ReadAllTextAsync(scratch["p.json"], patience.Token));
    }

    private static void Check(string json)
    {
        var plan = CutPlanJson.Read(Encoding.UTF8.GetBytes(json)).Plan!;
        Assert.Empty(PlanVerifier.Check(CutRequestJson.Read(Encoding.UTF8.GetBytes(Requests.Hard())).Request!, plan));
        Assert.True(plan.Seconds < 3600);
    }

    private static async Task<string> ReadUntil(Process process, string word, CancellationToken cancel)
    {
        var (seen, buffer) = (new StringBuilder(), new char[1024]);
        int got;
        while (
            !seen.ToString().Contains(word, StringComparison.Ordinal)
            && (got = await process.StandardOutput.ReadAsync(buffer, cancel)) > 0
        )
            seen.Append(buffer, 0, got);
        return seen.ToString();
    }
}
