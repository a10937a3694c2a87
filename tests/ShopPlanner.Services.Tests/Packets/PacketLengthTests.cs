using ShopPlanner.Packets.Tests;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Packets;

/// <summary>A packet of a real plan, with its usual sections, is short enough to be printed and taken along; read back by another
/// library.</summary>
public sealed class PacketLengthTests
{
    private const double MostFree = 0.4,
        Margin = 18;

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public async Task Three_demo_projects_fit_ten_pages(PaperSize paper) =>
        Check(await PrintedPackets.OfDemoAsync(paper), 10, ["Plant stand", "Pantry cupboard", "Mudroom bench"]);

    [Theory]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A4)]
    public async Task One_bookcase_fits_seven_pages(PaperSize paper) =>
        Check(await PrintedPackets.OfDesignAsync("bookcase", paper), 7, ["Bookcase"]);

    private static void Check(byte[] file, int mostPages, string[] names)
    {
        using var packet = new ReadBack(file);
        Assert.InRange(packet.Pages.Count, 1, mostPages);
        Assert.All(names, name => Assert.Contains(name, packet.Text(), StringComparison.Ordinal));
        Assert.All(
            packet.Pages,
            page => Assert.True(ReadBack.IsWithin(page, Margin), $"page {page.Number} goes over the margin")
        );
        Assert.All(
            packet.Pages,
            page => Assert.Contains($"page {page.Number} of {packet.Pages.Count}", ReadBack.Text(page), StringComparison.Ordinal)
        );
        Assert.All(
            packet.Pages.SkipLast(1),
            page => Assert.True(ReadBack.Emptiness(page) <= MostFree, $"page {page.Number}: {ReadBack.Emptiness(page):0.00} free")
        );
        Assert.NotEmpty(packet.Outline);
        Assert.All(packet.Outline, entry => Assert.Contains(First(entry.Title), ReadBack.Text(packet.Pages[entry.Page - 1])));
    }

    // A long heading is cut off on its page.
    private static string First(string title) => title.Split(' ')[0];
}
