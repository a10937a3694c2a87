using System.Collections.Immutable;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Packets;

namespace ShopPlanner.Services.Tests.Packets;

/// <summary>Which sections packets have is remembered for the shop.</summary>
public sealed class PacketChoiceTests
{
    private const int One = 1;

    [Fact]
    public async Task A_choice_is_kept_over_a_restart_and_given_up_again()
    {
        var folder = TestShop.NewFolder();
        var wanted = PacketSections.Usual(One).Remove(PacketSection.Cover);
        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            var choice = shop.Get<IPacketChoice>();
            Assert.Null(await choice.GetAsync(TestShop.Cancel));
            Assert.True((await choice.SetAsync(PacketSection.Cover, isIn: false, One, TestShop.Cancel)).Ok);
        }

        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            var choice = shop.Get<IPacketChoice>();
            Assert.Equal(wanted, (await choice.GetAsync(TestShop.Cancel))!.Value);
            Assert.True((await choice.ForgetAsync(TestShop.Cancel)).Ok);
            Assert.Null(await choice.GetAsync(TestShop.Cancel));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Sections_taken_in_at_once_are_all_in()
    {
        await using var shop = await TestShop.OpenAsync();
        var choice = shop.Get<IPacketChoice>();
        var all = PacketSections.All.Select(one => one.Section).ToImmutableArray();
        await Task.WhenAll(all.Select(section => choice.SetAsync(section, isIn: true, One, TestShop.Cancel)));
        Assert.Equal(all, (await choice.GetAsync(TestShop.Cancel))!.Value);
    }

    [Fact]
    public async Task Without_any_section_the_packet_is_as_usual()
    {
        await using var shop = await TestShop.OpenAsync();
        var choice = shop.Get<IPacketChoice>();
        foreach (var section in PacketSections.Usual(One))
            await choice.SetAsync(section, isIn: false, One, TestShop.Cancel);
        Assert.Null(await choice.GetAsync(TestShop.Cancel));
    }
}
