using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;
using ShopPlanner.Cutting.Together;

namespace ShopPlanner.Cutting.Tests.Together;

/// <summary>Where to buy, worked out by hand: pine is $10 at North and $7 at South, plywood $40 at North and $60 at
/// South.</summary>
public sealed class StoreBasketTests
{
    private static readonly CutRequest Request = Some.Request(
        [Some.Board(), Some.Sheet()],
        [
            Some.Stock("n1", "96", price: 10),
            Some.Stock("s1", "96", price: 7),
            Some.Stock("n2", "96", "48", 40, material: "ply"),
            Some.Stock("s2", "96", "48", 60, material: "ply"),
        ],
        [Some.Part("P1", "90", 2), Some.Part("P2", "90", width: "40", material: "ply")]
    );

    [Theory]
    [InlineData(0, "North, South", 54)]
    [InlineData(5.99, "North, South", 65.98)]
    [InlineData(6, "North", 66)]
    [InlineData(20, "North", 80)]
    public void A_second_store_has_to_be_worth_the_trip(decimal trip, string stores, decimal total)
    {
        var best = Of(trip, 0, onlyOne: false)[0];
        Assert.Equal((stores, total), (string.Join(", ", best.Stores), best.Total.Amount));
    }

    [Fact]
    public void One_store_is_one_store() =>
        Assert.Equal(
            [("North", 60m), ("South", 74m)],
            Of(0, 0, onlyOne: true).Select(basket => (basket.Stores.Single(), basket.Total.Amount))
        );

    [Fact]
    public void Of_equal_costs_the_shorter_drive_is_taken()
    {
        var best = Of(6, 30, onlyOne: false)[0];
        Assert.Equal((66m, 30), (best.Total.Amount, best.Minutes));
    }

    [Fact]
    public void A_store_at_which_nothing_is_bought_is_not_driven_to()
    {
        var rich = Request with
        {
            Stock =
            [
                .. Request.Stock,
                Some.Stock("r1", "200", quantity: 1, offcut: true),
                Some.Stock("r2", "96", "48", quantity: 1, offcut: true, material: "ply"),
            ],
        };
        var best = StoreBaskets.Of(rich, Stores(9, 10), false, TimeSpan.FromMilliseconds(200), Plan)[0];
        Assert.Empty(best.Stores);
        Assert.Equal((0m, 0), (best.Total.Amount, best.Minutes));
    }

    [Fact]
    public void A_basket_that_leaves_parts_out_is_never_the_best()
    {
        var poor = Request with { Stock = [.. Request.Stock.Where(stock => stock.Id != "n2")] };
        var best = StoreBaskets.Of(poor, Stores(500, 0), true, TimeSpan.FromMilliseconds(200), Plan)[0];
        Assert.Equal(("South", 0), (best.Stores.Single(), best.Missing));
    }

    [Fact]
    public void Of_many_stores_ones_pairs_and_all_are_tried()
    {
        var stores = Enumerable.Range(0, 6).Select(i => new StoreTrip($"S{i}", [$"b{i}"], Money.Zero, 0)).ToList();
        var request = Some.Request(
            [Some.Board()],
            stores.Select((_, i) => Some.Stock($"b{i}", "96", price: 10 + i)),
            [Some.Part("P1", "90")]
        );
        var asked = 0;
        var best = StoreBaskets.Of(
            request,
            stores,
            false,
            TimeSpan.FromMilliseconds(100),
            (one, time) =>
            {
                asked++;
                return Plan(one, time);
            }
        )[0];
        Assert.Equal((6 + 15 + 1, "S0"), (asked, best.Stores.Single()));
    }

    private static ImmutableArray<StoreBasket> Of(decimal trip, int minutes, bool onlyOne) =>
        StoreBaskets.Of(Request, Stores(trip, minutes), onlyOne, TimeSpan.FromMilliseconds(300), Plan);

    private static StoreTrip[] Stores(decimal trip, int minutes) =>
        [new("North", ["n1", "n2"], Money.From(trip), minutes), new("South", ["s1", "s2"], Money.From(trip), minutes)];

    private static CutPlan Plan(CutRequest request, TimeSpan? time) =>
        Some.Planned(request, new SearchControl { Time = time, Workers = 1 });
}
