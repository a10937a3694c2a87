namespace ShopPlanner.Web.Tests.Security;

/// <summary>Host headers that name no address at all.</summary>
public sealed class OddHostTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    [Theory]
    [InlineData("localhost:99999")]
    [InlineData("localhost:65536")]
    [InlineData("localhost:99999999999999999999")]
    [InlineData("[::1]:99999")]
    [InlineData("127.0.0.1:70000")]
    [InlineData("workshop.example:-1")]
    [InlineData("localhost:80:80")]
    [InlineData("a:b:c")]
    [InlineData("[::1")]
    [InlineData("[")]
    [InlineData(":80")]
    [InlineData("")]
    [InlineData("localhost:abc")]
    [InlineData("bücher.example")]
    [InlineData("localhost/../x")]
    [InlineData("user@localhost")]
    public async Task A_host_that_is_no_address_is_refused(string host)
    {
        foreach (var path in new[] { "/projects", "/nowhere", "/assets/styles/tokens.css", "/_blazor/negotiate" })
        {
            var answer = await web.SendAsync("GET", path, host, null);
            Assert.True(answer.Status is 400 or 421, $"{path} answered {answer.Status}");
        }
    }

    [Theory]
    [InlineData("localhost:99999")]
    [InlineData("[::1]:65536")]
    public async Task A_port_that_is_none_is_said_to_be_none(string host)
    {
        var answer = await web.SendAsync("GET", "/projects", host, null);
        Assert.Equal(400, answer.Status);
        Assert.Contains(host, answer.Body, StringComparison.Ordinal);
        Assert.Contains("65535", answer.Body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("localhost:1")]
    [InlineData("localhost:65535")]
    [InlineData("[::1]:5080")]
    public async Task Any_port_there_can_be_is_served(string host) =>
        Assert.Equal(200, (await web.SendAsync("GET", "/projects", host, null)).Status);
}
