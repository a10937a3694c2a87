using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.BadWood;

/// <summary>Some hundred random requests, in whose rack and bin every piece has bad places.</summary>
public sealed class BadPlacePropertyTests
{
    private static readonly SearchControl Rounds = new() { Iterations = 60, Workers = 1 };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Every_plan_passes_the_verifier_and_costs_no_less_than_with_sound_wood(int seed)
    {
        var random = new Random(seed * 1000);
        foreach (var sound in RandomRequests.From(seed, 100))
        {
            var request = Spoiled(sound, random);
            Assert.Empty(request.Check());
            var (bad, good) = (Some.Planned(request, Rounds), Some.Planned(sound, Rounds));
            if (!bad.Unplaced.IsEmpty || !good.Unplaced.IsEmpty)
                continue;
            Assert.True(bad.Cost >= good.CostLowerBound, $"{bad.Cost} is less than {good.CostLowerBound}");
            if (good.Status == PlanStatus.Proven)
                Assert.True(bad.Cost >= good.Cost, $"{bad.Cost} is less than {good.Cost}");
        }
    }

    [Fact]
    public void The_same_request_gets_the_same_plan()
    {
        var random = new Random(5);
        foreach (var sound in RandomRequests.From(5, 12))
        {
            var request = Spoiled(sound, random);
            var (one, other) = (Some.Planned(request, Rounds), Some.Planned(request, Rounds));
            Assert.Equal(CutPlanJson.Write(one with { Seconds = 0 }), CutPlanJson.Write(other with { Seconds = 0 }));
        }
    }

    [Fact]
    public void Limits_of_the_saw_hold_beside_bad_places()
    {
        var random = new Random(6);
        foreach (var sound in RandomRequests.From(6, 60))
        {
            var request = Spoiled(sound, random);
            Some.Planned(
                request with
                {
                    Saw = request.Saw with { WidestRip = Some.Of("14"), LongestCrosscut = Some.Of("20") },
                },
                Rounds
            );
        }
    }

    // Each piece of the bin becomes pieces of their own; new stock of one piece is bad too, now and then.
    private static CutRequest Spoiled(CutRequest request, Random random) =>
        request with
        {
            Stock =
            [
                .. request.Stock.Where(stock => !stock.Offcut),
                .. request
                    .Stock.SelectMany(stock => Enumerable.Range(0, stock.Quantity ?? random.Next(0, 2)).Select(i => (stock, i)))
                    .Select(pair =>
                        pair.stock with
                        {
                            Id = $"{pair.stock.Id}-{pair.i}",
                            Quantity = 1,
                            BadPlaces = [.. Enumerable.Range(0, random.Next(1, 5)).Select(_ => Place(pair.stock, random))],
                            Untrimmed = random.Next(2) == 0 ? null : (StockEdges)random.Next(0, 4),
                        }
                    ),
            ],
        };

    private static BadPlace Place(CutStock stock, Random random)
    {
        var (x, dx) = Span(stock.Length, random);
        var (y, dy) = random.Next(2) == 0 ? (Length.Zero, stock.Width) : Span(stock.Width, random);
        return new(x, y, dx, dy);
    }

    private static (Length From, Length Extent) Span(Length whole, Random random)
    {
        var extent = Length.FromTicks(
            Math.Min(whole.Ticks, random.NextInt64(1, 1 + (random.Next(2) == 0 ? 4000 : whole.Ticks / 3)))
        );
        var from = random.Next(4) switch
        {
            0 => Length.Zero,
            1 => whole - extent,
            _ => Length.FromTicks(random.NextInt64(0, (whole - extent).Ticks + 1)),
        };
        return (from, extent);
    }
}
