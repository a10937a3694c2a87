using ShopPlanner.Services.Common;
using ShopPlanner.Services.Shop;

namespace ShopPlanner.Web.Features.Shop;

/// <summary>Changes the shop's settings where no field does.</summary>
internal static class ShopSaving
{
    private const int Tries = 5;

    /// <summary>Changes the settings as they are now; another device's change of something else is no conflict.</summary>
    public static async Task<Outcome<ShopSettings>> ChangeAsync(IShopService shop, Func<ShopSettings, ShopSettings> change)
    {
        var outcome = await shop.SaveAsync(change(await shop.GetAsync()));
        for (var tries = 1; tries < Tries && outcome.Kind == OutcomeKind.Conflict; tries++)
            outcome = await shop.SaveAsync(change(await shop.GetAsync()));
        return outcome;
    }
}
