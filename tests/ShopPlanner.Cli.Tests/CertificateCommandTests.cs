namespace ShopPlanner.Cli.Tests;

/// <summary>The certificate command of the built program.</summary>
public sealed class CertificateCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task It_says_what_the_certificate_is_for_where_it_lies_and_its_fingerprint()
    {
        var run = await ShopPlannerProgram.RunAsync("certificate", "--data", scratch.Folder, "--host", "workshop.example");
        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Contains("localhost", run.Output, StringComparison.Ordinal);
        Assert.Contains("workshop.example", run.Output, StringComparison.Ordinal);
        Assert.Contains(Path.Combine(scratch.Folder, "certificate", "authority.pem"), run.Output, StringComparison.Ordinal);
        Assert.Matches("fingerprint: ([0-9A-F]{2} ){31}[0-9A-F]{2}", run.Output);
        var again = await ShopPlannerProgram.RunAsync("certificate", "--data", scratch.Folder, "--host", "another.example");
        Assert.Equal(2, again.Exit);
        Assert.Contains("--new-authority", again.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_host_with_a_port_is_refused()
    {
        var run = await ShopPlannerProgram.RunAsync("certificate", "--data", scratch.Folder, "--host", "https://shop:5443");
        Assert.Equal(2, run.Exit);
        Assert.Contains("'https://shop:5443' is not a name or address", run.Error, StringComparison.Ordinal);
        Assert.Empty(scratch.Files);
    }
}
