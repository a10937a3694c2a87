using System.Collections.Immutable;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Packets;

namespace ShopPlanner.Services.Tests.Packets;

/// <summary>Which sections packets have is remembered for the shop.</summary>
public sealed class PacketChoiceTests
{
    [Fact]
    public async Task A_choice_is_kept_over_a_restart_and_given_up_again()
    {
        var folder = TestShop.NewFolder();
        ImmutableArray<PacketSection> some = [PacketSection.Shopping, PacketSection.Layouts];
        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            Assert.Null(await shop.Get<IPacketChoice>().GetAsync(TestShop.Cancel));
            await shop.Get<IPacketChoice>().SaveAsync(some, TestShop.Cancel);
        }

        await using (var shop = await TestShop.OpenAsync(folder: folder))
        {
            Assert.Equal(some, (await shop.Get<IPacketChoice>().GetAsync(TestShop.Cancel))!.Value);
            await shop.Get<IPacketChoice>().SaveAsync(null, TestShop.Cancel);
            Assert.Null(await shop.Get<IPacketChoice>().GetAsync(TestShop.Cancel));
        }

        Directory.Delete(folder, recursive: true);
    }
}
