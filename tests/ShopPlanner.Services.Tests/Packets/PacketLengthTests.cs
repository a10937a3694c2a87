using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Packets;

/// <summary>A packet of a real plan is short enough to be printed and taken along.</summary>
public sealed class PacketLengthTests
{
    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public async Task Three_demo_projects(PaperSize paper) =>
        Assert.NotEmpty(await PrintedPackets.OfDemoAsync(paper));

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public async Task One_bookcase(PaperSize paper) =>
        Assert.NotEmpty(await PrintedPackets.OfDesignAsync("bookcase", paper));
}
