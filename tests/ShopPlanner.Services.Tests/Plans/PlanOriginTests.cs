using System.Collections.Immutable;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Tests.Plans;

/// <summary>What ids of a request mean is read in one place.</summary>
public sealed class PlanOriginTests
{
    private static readonly Guid Piece = Guid.CreateVersion7();
    private static readonly Guid Price = Guid.CreateVersion7();

    private static readonly ImmutableDictionary<string, Guid> Pieces = ImmutableDictionary
        .Create<string, Guid>()
        .Add("B7", Piece)
        .Add("R12", Piece);

    [Theory]
    [InlineData("B7", StockPlace.Bin)]
    [InlineData("R12", StockPlace.Rack)]
    public void A_tag_is_a_piece_of_its_place(string id, StockPlace place) =>
        Assert.Equal(new StockOrigin.PieceOrigin(Piece, place), StockOrigin.Of(id, Pieces));

    [Fact]
    public void A_price_is_known_by_its_id() =>
        Assert.Equal(new StockOrigin.PriceOrigin(Price), StockOrigin.Of(Price.ToString(), Pieces));

    [Theory]
    [InlineData("B8")]
    [InlineData("")]
    [InlineData("pine 8 ft")]
    public void Any_other_id_is_neither(string id) => Assert.IsType<StockOrigin.OtherOrigin>(StockOrigin.Of(id, Pieces));

    [Theory]
    [InlineData("BB A", "A")]
    [InlineData("BB pA", "pA")]
    [InlineData("A", "A")]
    public void A_part_has_the_mark_of_its_row(string id, string mark) =>
        Assert.Equal(new PartOrigin(Piece, mark), PartOrigin.Of(id, Piece));

    [Theory]
    [InlineData(StockPlace.Bin, "B7")]
    [InlineData(StockPlace.Rack, "R7")]
    public void A_tag_tells_the_place_that_it_was_given_for(StockPlace place, string tag)
    {
        Assert.Equal(tag, StockTags.Of(place, 7));
        Assert.Equal(place, StockTags.PlaceOf(tag));
    }
}
