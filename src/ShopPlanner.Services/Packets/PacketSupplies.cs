using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Packets.Model;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Services.Packets;

/// <summary>What is bought besides boards and sheets, for the packet.</summary>
internal static class PacketSupplies
{
    /// <summary>A project's list, with what its finish takes where that is not on the list yet.</summary>
    public static IEnumerable<PacketSupply> Of(ProjectSupplies list, string name, WorkView? work)
    {
        var finish = work?.Finish?.Buy ?? [];
        var wanted = finish.Select(item => item.Name).ToHashSet(StringComparer.Ordinal);
        var listed = list.Lines.Where(line => line.IsNeeded || line.Bought).ToList();
        return listed
            .Select(line => new PacketSupply(
                name,
                line.Name,
                line.Amount,
                wanted.Contains(line.Name) ? SupplyAisle.Finish : SupplyAisle.Hardware
            )
            {
                IsBought = line.Bought,
                Price = line.Price,
            })
            .Concat(
                finish
                    .Where(item => listed.All(line => line.Name != item.Name))
                    .Select(item => new PacketSupply(
                        name,
                        item.Name,
                        item.Quantity.ToString(CultureInfo.InvariantCulture),
                        SupplyAisle.Finish
                    ))
            );
    }

    /// <summary>How many of each stock are bought, by its id.</summary>
    public static ImmutableDictionary<string, int> Bought(ShoppingList list) =>
        list.Lines.ToImmutableDictionary(line => line.Stock, line => line.Have);
}
