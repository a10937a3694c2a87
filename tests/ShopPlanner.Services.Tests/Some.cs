using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Stores;

namespace ShopPlanner.Services.Tests;

/// <summary>Ordinary things to test with.</summary>
internal static class Some
{
    public const string Pine = "pine-1x3",
        Birch = "birch-ply-3-4",
        Device = "test tablet";

    public const LengthUnit Inch = LengthUnit.Inch;

    public static PartTexts Part(
        string length = "34 1/2",
        string mark = "",
        string quantity = "4",
        string material = Pine,
        string width = ""
    ) => new(Guid.CreateVersion7(), mark, "Leg", material, length, width, quantity, false, "");

    public static PartEdit New(PartTexts texts) => new(texts, null);

    public static StockAddition Offcut(string length, string material = Pine, string quantity = "1") =>
        new(StockPlace.Bin, material, length, "", quantity, "");

    public static PriceEdit Price(string length = "96", string price = "6.48", string material = Pine, string width = "") =>
        new(null, material, length, width, price, true, null);

    public static async Task<ProjectView> ProjectAsync(TestShop shop, string name = "Boot-room bench") =>
        (await shop.Projects.CreateAsync(name, Inch, CommandId.New(), TestShop.Cancel)).Value!;

    public static async Task<StoreView> StoreAsync(TestShop shop, params PriceEdit[] prices)
    {
        var store = (await shop.Stores.CreateAsync("Corner lumber", Inch, CommandId.New(), TestShop.Cancel)).Value!;
        foreach (var price in prices)
            store = (await shop.Stores.SavePriceAsync(store.Id, price, CommandId.New(), TestShop.Cancel)).Value!;
        return store;
    }
}
