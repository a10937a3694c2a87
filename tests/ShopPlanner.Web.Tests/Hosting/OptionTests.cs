using ShopPlanner.Services.Common;
using ShopPlanner.Web.Hosting;

namespace ShopPlanner.Web.Tests.Hosting;

/// <summary>The command line. Faults go to standard error, so these tests may not run beside each other.</summary>
[Collection("console")]
public sealed class OptionTests
{
    [Fact]
    public void Without_options_the_users_own_folder_and_the_usual_port_are_taken()
    {
        var settings = Read().Settings!;
        Assert.Equal(ShopFolder.Default(demo: false), settings.DataFolder);
        Assert.Equal(5080, settings.Port);
        Assert.False(settings.OnlyThisComputer);
    }

    [Fact]
    public void The_demo_has_a_folder_of_its_own() =>
        Assert.NotEqual(ShopFolder.Default(demo: false), Read("--demo").Settings!.DataFolder);

    [Fact]
    public void Everything_given_is_read()
    {
        var settings = Read(
            "--data",
            "shop",
            "--port",
            "0",
            "--only-this-computer",
            "--host",
            "workshop.example",
            "--host",
            "192.168.7.7"
        ).Settings!;
        Assert.Equal(Path.GetFullPath("shop"), settings.DataFolder);
        Assert.Equal(0, settings.Port);
        Assert.True(settings.OnlyThisComputer);
        Assert.Equal(["workshop.example", "192.168.7.7"], settings.Hosts);
    }

    [Theory]
    [InlineData(null, false, "around", "around")]
    [InlineData("named", false, "around", "named")]
    [InlineData(null, true, "around", null)]
    [InlineData("named", true, "around", "named")]
    [InlineData(null, false, null, null)]
    public void The_demo_is_not_put_on_the_server_of_the_environment(string? named, bool demo, string? around, string? server) =>
        Assert.Equal(server, WebOptions.Server(named, demo, around));

    [Fact]
    public void Every_wrong_option_is_named_at_once()
    {
        var (reading, said) = ReadAloud("--port", "70000", "--urls", "localhost:1", "--host", "http://x");
        Assert.Equal(2, reading.ExitCode);
        Assert.Null(reading.Settings);
        Assert.Contains("--port: '70000'", said, StringComparison.Ordinal);
        Assert.Contains("--urls: 'localhost:1'", said, StringComparison.Ordinal);
        Assert.Contains("--host: 'http://x'", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_names_may_stand_in_one_option() =>
        Assert.Equal(
            ["workshop.local", "192.0.2.7", "shop.example"],
            Read("--host", "workshop.local 192.0.2.7", "--host", "shop.example").Settings!.Hosts
        );

    [Fact]
    public void No_name_at_all_is_no_fault() => Assert.Empty(Read("--host", "").Settings!.Hosts);

    [Theory]
    [InlineData("http://workshop.example:5080", "has a name")]
    [InlineData("http://127.0.0.1:5080/shop", "has a path")]
    [InlineData("http://localhost:0", "asks for a free port: write 127.0.0.1")]
    public void An_address_that_cannot_be_listened_on_as_meant_is_refused(string url, string why) =>
        Assert.Contains($"--urls: '{url}' {why}", ReadAloud("--urls", url).Said);

    [Theory]
    [InlineData("*")]
    [InlineData("localhost")]
    [InlineData("192.0.2.7")]
    [InlineData("[::1]")]
    public void An_address_of_this_computer_is_taken(string host) =>
        Assert.Equal([$"http://{host}:5080"], Read("--urls", $"http://{host}:5080").Settings!.Urls);

    [Fact]
    public void In_a_container_the_name_given_is_announced_and_never_its_own_address()
    {
        Assert.Equal("workshop.local", Announcement.ForTablet("172.17.0.2", ["localhost", "workshop.local"], container: true));
        Assert.Null(Announcement.ForTablet("172.17.0.2", ["localhost"], container: true));
        Assert.Equal("192.0.2.7", Announcement.ForTablet("192.0.2.7", ["workshop.local"], container: false));
    }

    [Theory]
    [InlineData("--nonsense")]
    [InlineData("--port")]
    [InlineData("--port", "many")]
    public void What_cannot_be_read_is_refused(params string[] args) => Assert.Equal(2, ReadAloud(args).Reading.ExitCode);

    [Theory]
    [InlineData(
        "http://[::]:5080",
        "192.168.1.5",
        "Shop Planner is at http://localhost:5080 — on the tablet: http://192.168.1.5:5080"
    )]
    [InlineData("http://0.0.0.0:80", null, "Shop Planner is at http://localhost:80")]
    [InlineData("http://127.0.0.1:7000", "192.168.1.5", "Shop Planner is at http://localhost:7000")]
    [InlineData("http://192.168.1.5:7000", "192.168.1.5", "Shop Planner is at http://192.168.1.5:7000")]
    public void The_addresses_are_announced(string bound, string? lan, string expected) =>
        Assert.Equal(expected, Announcement.Text([new Uri(bound)], lan));

    private static WebOptionsReading Read(params string[] args) => WebOptions.Read(args);

    private static (WebOptionsReading Reading, string Said) ReadAloud(params string[] args)
    {
        var before = Console.Error;
        using var said = new StringWriter();
        Console.SetError(said);
        try
        {
            return (Read(args), said.ToString());
        }
        finally
        {
            Console.SetError(before);
        }
    }
}
