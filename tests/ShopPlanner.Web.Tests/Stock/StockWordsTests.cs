using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;
using ShopPlanner.Web.Features.Stock;

namespace ShopPlanner.Web.Tests.Stock;

/// <summary>What the history of a piece says.</summary>
public sealed class StockWordsTests
{
    [Theory]
    [InlineData(StockEntryKind.Discarded, "thrown away", "Thrown away")]
    [InlineData(StockEntryKind.Discarded, "cracked", "Thrown away: cracked")]
    [InlineData(StockEntryKind.Bought, "bought", "Bought")]
    [InlineData(StockEntryKind.Logged, "found in the shop", "Added")]
    [InlineData(StockEntryKind.Corrected, "measured anew", "Measured again")]
    [InlineData(StockEntryKind.Corrected, "measured again", "Measured again")]
    [InlineData(StockEntryKind.Cut, "cut for Plant stand", "Cut up for Plant stand")]
    [InlineData(StockEntryKind.Bought, "bought for Plant stand", "Bought for Plant stand")]
    [InlineData(StockEntryKind.Inspected, "bad place removed: Left end, 6″", "Bad place removed: Left end, 6″")]
    [InlineData(StockEntryKind.Binned, "cut for Plant stand", "Put in the bin after cutting for Plant stand")]
    [InlineData(StockEntryKind.Undone, "undone: measured anew", "Undone: measured again")]
    [InlineData(StockEntryKind.Undone, "undone: thrown away", "Undone: thrown away")]
    [InlineData(StockEntryKind.Undone, "taken back: bought", "Undone: bought")]
    [InlineData(StockEntryKind.Binned, "", "Put in the bin after cutting")]
    public void Nothing_is_said_twice(StockEntryKind kind, string reason, string said) =>
        Assert.Equal(
            said,
            StockWords.Said(new(Guid.Empty, Guid.Empty, "B1", default, kind, Length.Zero, Length.Zero, reason, "this computer"))
        );
}
