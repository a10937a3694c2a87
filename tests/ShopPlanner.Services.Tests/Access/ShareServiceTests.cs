using ShopPlanner.Services.Access;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Access;

/// <summary>Links that show one plan.</summary>
public sealed class ShareServiceTests
{
    [Fact]
    public async Task A_link_shows_its_plan_until_its_day_and_is_shown_once()
    {
        await using var shop = await TestShop.OpenAsync();
        var (shares, id, plan) = (shop.Get<IShareService>(), Guid.CreateVersion7(), Guid.CreateVersion7());
        var offer = shares.Share(id, plan, "Bookcase", 7).Value!;
        Assert.Equal(32, offer.Token.Length);
        Assert.Equal(plan, shares.Find(offer.Token)!.Plan);
        Assert.Null(shares.Find(offer.Token[..^1]));
        Assert.Null(shares.Find(""));
        Assert.Equal(OutcomeKind.Faulty, shares.Share(id, plan, "Bookcase", 7).Kind);
        shop.Clock.Advance(TimeSpan.FromDays(7));
        Assert.Null(shares.Find(offer.Token));
        Assert.Empty(shop.Get<IAccessService>().Get().Shares);
    }

    [Fact]
    public async Task A_link_that_was_ended_shows_nothing()
    {
        await using var shop = await TestShop.OpenAsync();
        var shares = shop.Get<IShareService>();
        var (ended, stays) = (Made(shares, "Bookcase"), Made(shares, "Table"));
        Assert.True(shares.End(ended.Share.Id).Ok);
        Assert.Null(shares.Find(ended.Token));
        Assert.NotNull(shares.Find(stays.Token));
        Assert.Equal(OutcomeKind.Missing, shares.End(ended.Share.Id).Kind);
        var text = await File.ReadAllTextAsync(Path.Combine(shop.Folder, "access.json"), TestShop.Cancel);
        Assert.DoesNotContain(stays.Token, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(91)]
    [InlineData(-1)]
    public async Task No_link_holds_for_ever(int days)
    {
        await using var shop = await TestShop.OpenAsync();
        var outcome = shop.Get<IShareService>().Share(Guid.CreateVersion7(), Guid.CreateVersion7(), "Bookcase", days);
        Assert.Equal("Days", Assert.Single(outcome.Faults).Field);
    }

    private static ShareOffer Made(IShareService shares, string name) =>
        shares.Share(Guid.CreateVersion7(), Guid.CreateVersion7(), name, 30).Value!;
}
