using System.Globalization;
using System.Text.RegularExpressions;
using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Tests.Hosting;

/// <summary>What starts and stops the program agrees with the program.</summary>
public sealed partial class DeployTests
{
    [Fact]
    public void The_unit_and_the_container_wait_longer_for_a_stop_than_the_program_takes()
    {
        Assert.True(Seconds(UnitStop(), "deploy/shop-planner.service") > Listening.StopTime.TotalSeconds);
        Assert.True(Seconds(ContainerStop(), "docker-compose.yml") > Listening.StopTime.TotalSeconds);
    }

    [Fact]
    public void The_unit_does_not_start_again_what_cannot_succeed()
    {
        var line = Assert.Single(Read("deploy/shop-planner.service").Split('\n'), line => line.StartsWith("RestartPrevent"));
        Assert.Equal($"RestartPreventExitStatus=2 {Running.CannotOpen}", line);
    }

    [Fact]
    public void The_options_that_the_container_gives_are_read()
    {
        var given = GivenOption().Matches(Read("deploy/Containerfile") + Read("docker-compose.yml"));
        string[] args = [.. given.Select(match => match.Groups[1].Value).Distinct()];
        Assert.Equal(["--data", "--health", "--host", "--port"], args.Order(StringComparer.Ordinal));
        Assert.NotNull(
            WebOptions.Read(["--health", "--port", "5080", "--data", "/data", "--host", "a.example b.example"]).Settings
        );
    }

    private static int Seconds(Regex setting, string file) =>
        int.Parse(setting.Match(Read(file)).Groups[1].Value, CultureInfo.InvariantCulture);

    private static string Read(string file)
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "ShopPlanner.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return File.ReadAllText(Path.Combine(folder, file));
    }

    [GeneratedRegex("^TimeoutStopSec=([0-9]+)$", RegexOptions.Multiline)]
    private static partial Regex UnitStop();

    [GeneratedRegex("stop_grace_period: ([0-9]+)s")]
    private static partial Regex ContainerStop();

    [GeneratedRegex("\"(--[a-z]+)\"")]
    private static partial Regex GivenOption();
}
