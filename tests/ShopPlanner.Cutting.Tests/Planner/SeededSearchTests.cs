using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>After an edit the search for a changed material begins with the layouts of the plan before it.</summary>
public sealed class SeededSearchTests
{
    private static readonly SearchControl Long = new() { Time = TimeSpan.FromSeconds(1.5), Workers = 1 };
    private static readonly SearchControl Glance = new() { Time = TimeSpan.FromMilliseconds(40), Workers = 1 };

    [Fact]
    public void A_part_taken_out_costs_no_more_than_before_at_first_glance()
    {
        var before = Sheets(40, 11);
        var plan = Some.Planned(before, Long);
        var after = before with { Parts = before.Parts.RemoveAt(5) };
        Assert.True(Some.Planned(after, Glance with { Earlier = new(before, plan) }).Cost <= plan.Cost);
    }

    [Fact]
    public void A_board_part_taken_out_costs_no_more_than_before_at_first_glance()
    {
        var before = Boards(60, 7);
        var plan = Some.Planned(before, Long);
        var after = before with { Parts = before.Parts.RemoveAt(3) };
        Assert.True(Some.Planned(after, Glance with { Earlier = new(before, plan) }).Cost <= plan.Cost);
    }

    [Fact]
    public void A_price_that_rose_keeps_layouts_that_are_as_good_as_any()
    {
        var before = Sheets(40, 3);
        var plan = Some.Planned(before, Long);
        var after = before with { Stock = [.. before.Stock.Select(stock => stock with { Price = stock.Price * 2 })] };
        var again = Some.Planned(after, Glance with { Earlier = new(before, plan) });
        Assert.True(again.Cost <= plan.Cost * 2);
    }

    [Theory, InlineData(1), InlineData(2), InlineData(3), InlineData(4)]
    public void Whatever_was_edited_the_plan_can_be_cut_and_is_about_as_cheap_as_without_the_earlier_one(int seed)
    {
        var chance = new Random(seed);
        for (var n = 0; n < 8; n++)
        {
            var before = n % 2 == 0 ? Sheets(8 + chance.Next(20), chance.Next()) : Boards(8 + chance.Next(30), chance.Next());
            var plan = Some.Planned(before, Glance);
            var after = Edited(before, chance);
            var seeded = Some.Planned(after, Glance with { Earlier = new(before, plan) });
            Assert.Equal(Some.Planned(after, Glance).Unplaced.Sum(one => one.Quantity), seeded.Unplaced.Sum(one => one.Quantity));
            Assert.True(seeded.Cost >= seeded.CostLowerBound);
        }
    }

    private static CutRequest Edited(CutRequest request, Random chance)
    {
        var (i, part) = (chance.Next(request.Parts.Length), request.Parts[chance.Next(request.Parts.Length)]);
        return chance.Next(6) switch
        {
            0 => request with { Parts = request.Parts.RemoveAt(i) },
            1 => request with
            {
                Parts = request.Parts.Add(part with { Id = "new", Length = part.Length + Length.FromInches(1) }),
            },
            2 => request with { Parts = request.Parts.Replace(part, part with { Quantity = part.Quantity + 3 }) },
            3 => request with
            {
                Parts = request.Parts.Replace(part, part with { Length = part.Length - Length.FromInches(0.5m) }),
            },
            4 => request with { Saw = request.Saw with { Kerf = Some.Of("3/16") } },
            _ => request with
            {
                Stock = [.. request.Stock.Select(stock => stock with { Length = stock.Length - Length.FromInches(1) })],
            },
        };
    }

    private static CutRequest Sheets(int parts, int seed)
    {
        var chance = new Random(seed);
        return Some.Request(
            [Some.Sheet()],
            [
                Some.Stock("s", "96", "48", 60, material: "ply"),
                Some.Stock("h", "48", "48", 33, material: "ply"),
                Some.Stock("o", "40", "30", 0, 2, true, "ply"),
            ],
            Enumerable
                .Range(0, parts)
                .Select(i =>
                    Some.Part(
                        "P" + i.ToString(CultureInfo.InvariantCulture),
                        Size(chance, 8, 36),
                        1 + chance.Next(3),
                        Size(chance, 4, 20),
                        chance.Next(2) == 0 ? Grain.Any : Grain.Length,
                        "ply"
                    )
                )
        );
    }

    private static CutRequest Boards(int parts, int seed)
    {
        var chance = new Random(seed);
        return Some.Request(
            [Some.Board()],
            [Some.Stock("8", "96", price: 6), Some.Stock("6", "72", price: 5), Some.Stock("o", "40", quantity: 2, offcut: true)],
            Enumerable
                .Range(0, parts)
                .Select(i => Some.Part("A" + i.ToString(CultureInfo.InvariantCulture), Size(chance, 6, 60), 1 + chance.Next(4)))
        );
    }

    private static string Size(Random chance, int least, int most) =>
        (chance.Next(least * 4, most * 4) / 4m).ToString(CultureInfo.InvariantCulture);
}
