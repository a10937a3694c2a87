using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Web.Features.Publish;

/// <summary>What is chosen to be published, as it stands in an address.</summary>
internal static class PublishQuery
{
    public const string License = "license",
        By = "by",
        Prices = "prices",
        Stores = "stores",
        Stock = "stock",
        Photos = "photos";

    private const string Yes = "yes";

    /// <summary>The choices of an address; what it leaves out is as usual.</summary>
    public static PublishChoices Read(string? license, string? by, string? prices, string? stores, string? stock) =>
        new(PublishLicense.Find(license) ?? PublishLicense.Reserved, by ?? "", prices == Yes, stores == Yes, stock == Yes);

    /// <summary>The choices for an address.</summary>
    public static IReadOnlyList<(string Name, string? Value)> Write(PublishChoices choices) =>
        [
            (License, choices.License == PublishLicense.Reserved ? null : choices.License.Id),
            (By, choices.By),
            (Prices, choices.HasPrices ? Yes : null),
            (Stores, choices.HasStores ? Yes : null),
            (Stock, choices.HasStock ? Yes : null),
        ];
}
