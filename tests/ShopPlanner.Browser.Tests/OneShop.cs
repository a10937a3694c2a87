namespace ShopPlanner.Browser.Tests;

/// <summary>Tests that look at pages, whatever the shop holds, share one program and one Chromium.</summary>
[CollectionDefinition(Name)]
public sealed class OneShop : ICollectionFixture<BrowserFixture>
{
    public const string Name = "one shop";
}
