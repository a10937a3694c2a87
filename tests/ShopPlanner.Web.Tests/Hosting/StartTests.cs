using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace ShopPlanner.Web.Tests.Hosting;

/// <summary>A start that fails says why in one line, and nothing else.</summary>
public sealed class StartTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("shop-planner-start-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_taken_port_is_named()
    {
        using var other = Take(IPAddress.Loopback, out var port);
        await FailsAsync(1, [$"Port {port} ", "--port"], "--port", Text(port), "--only-this-computer");
    }

    [Fact]
    public async Task A_taken_address_is_named_rather_than_the_usual_port()
    {
        using var other = Take(IPAddress.Loopback, out var port);
        await FailsAsync(1, [$"--urls: 'http://127.0.0.1:{port}'", "another program"], "--urls", $"http://127.0.0.1:{port}");
    }

    // 192.0.2.0/24 is set aside for documentation (RFC 5737): no computer has one of its addresses in earnest.
    [Fact]
    public async Task An_address_that_this_computer_does_not_have_is_named() =>
        await FailsAsync(1, ["--urls: 'http://192.0.2.77:5999'", "no such address"], "--urls", "http://192.0.2.77:5999");

    [Fact]
    public async Task Https_without_a_certificate_is_named() =>
        await FailsAsync(1, ["--urls: 'https://127.0.0.1:0'", "certificate"], "--urls", "https://127.0.0.1:0");

    [Fact]
    public async Task A_data_folder_that_cannot_be_made_is_named()
    {
        var file = Path.Combine(folder, "file");
        await File.WriteAllTextAsync(file, "", TestContext.Current.CancellationToken);
        using var program = new StartedProgram("--data", Path.Combine(file, "shop"), "--port", "0", "--only-this-computer");
        AssertOneLine(await program.EndAsync(), 3, "The data folder", Path.Combine(file, "shop"), "--data");
    }

    [Fact]
    public async Task A_keys_folder_that_cannot_be_written_is_named()
    {
        Assert.SkipUnless(Directory.Exists("/proc/self"), "Needs a folder that nobody may write: /proc/self.");
        Directory.CreateSymbolicLink(Path.Combine(folder, "keys"), "/proc/self");
        await FailsAsync(3, ["The data folder", Path.Combine(folder, "keys")], "--port", "0", "--only-this-computer");
    }

    [Fact]
    public async Task A_running_program_is_healthy_and_a_stop_is_answered_in_time_and_with_success()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There is no SIGTERM.");
        using var program = new StartedProgram("--data", folder, "--port", "0", "--only-this-computer");
        var announced = await program.ReadLineAsync();
        Assert.StartsWith("Shop Planner is at http://localhost:", announced, StringComparison.Ordinal);
        Assert.Equal($"Its data is in {folder}", await program.ReadLineAsync());
        var port = announced!.Split(':')[^1];
        using (var healthy = new StartedProgram("--health", "--port", port))
            Assert.Equal((0, "", ""), await healthy.EndAsync());
        using var signal = Process.Start("kill", ["-TERM", Text(program.Id)]);
        Assert.Equal((0, "", ""), await program.EndAsync());
        using var dead = new StartedProgram("--health", "--port", port);
        AssertOneLine(await dead.EndAsync(), 1, $"http://127.0.0.1:{port}/", "does not answer");
    }

    private async Task FailsAsync(int exit, string[] words, params string[] args)
    {
        using var program = new StartedProgram(["--data", folder, .. args]);
        AssertOneLine(await program.EndAsync(), exit, words);
    }

    private static void AssertOneLine((int Exit, string Output, string Error) ended, int exit, params string[] words)
    {
        Assert.Equal("", ended.Output);
        var line = Assert.Single(ended.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.All(words, word => Assert.Contains(word, line, StringComparison.Ordinal));
        Assert.Equal(exit, ended.Exit);
    }

    private static TcpListener Take(IPAddress address, out int port)
    {
        var listener = new TcpListener(address, 0);
        listener.Start();
        port = ((IPEndPoint)listener.LocalEndpoint).Port;
        return listener;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
