using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>After an edit the search begins with what the plan before it still serves for: one round is enough to be no dearer.</summary>
public sealed class EditedPlanTests
{
    private const int Sheet = 60;
    private const int Board = 6;

    private static readonly SearchControl OneRound = new() { Iterations = 1, Workers = 1 };

    private static readonly CutRequest Before = Some.Request(
        [Some.Board(), Some.Sheet()],
        [
            Some.Stock("b", "96", price: Board),
            Some.Stock("s", "96", "48", Sheet, material: "ply"),
            Some.Stock("h", "48", "48", 34, material: "ply"),
        ],
        [
            .. Enumerable.Range(0, 9).Select(i => Some.Part($"L{i}", $"{19 + (5 * i)} 3/8", 3 + (i % 4))),
            .. Enumerable
                .Range(0, 11)
                .Select(i => Some.Part($"P{i}", $"{17 + (3 * i)}", 2 + (i % 3), $"{9 + (2 * (i % 7))}", Grain.Any, "ply")),
        ]
    );

    // Long enough for a plan that one round does not find again.
    private static readonly CutPlan Good = Some.Planned(Before, new SearchControl { Iterations = 6000, Workers = 1 });

    [Fact]
    public void One_round_without_the_plan_before_does_worse() => Assert.True(Some.Planned(Before, OneRound).Cost > Good.Cost);

    [Theory]
    [InlineData("L3", 1, Board)]
    [InlineData("L8", 2, 2 * Board)]
    [InlineData("P10", 1, Sheet)]
    [InlineData("L0", -1, 0)]
    [InlineData("P2", -1, 0)]
    public void More_or_fewer_of_a_part_cost_what_they_need_at_most(string part, int more, int needs) =>
        AssertCosts(Good.Cost.Amount + needs, Edited(part, one => one with { Quantity = one.Quantity + more }));

    [Theory]
    [InlineData("L5")]
    [InlineData("P4")]
    public void A_part_that_is_gone_costs_nothing(string part) =>
        AssertCosts(Good.Cost.Amount, Before with { Parts = [.. Before.Parts.Where(one => one.Id != part)] });

    [Fact]
    public void A_new_part_costs_its_own_stock_at_most() =>
        AssertCosts(
            Good.Cost.Amount + Board + Sheet,
            Before with
            {
                Parts = [Some.Part("new", "40"), .. Before.Parts, Some.Part("panel", "40", 1, "30", Grain.Length, "ply")],
            }
        );

    [Theory]
    [InlineData("L6", "50", 0)]
    [InlineData("P7", "37", 0)]
    [InlineData("L6", "51", 5 * Board)]
    [InlineData("P7", "39", 3 * Sheet)]
    public void A_part_of_another_size_keeps_its_place_where_it_fits(string part, string length, int needs) =>
        AssertCosts(Good.Cost.Amount + needs, Edited(part, one => one with { Length = Some.Of(length) }));

    [Fact]
    public void Other_prices_leave_the_layouts_as_good_as_they_were()
    {
        var dearer = Before with
        {
            Stock = [.. Before.Stock.Select(stock => stock with { Price = stock.Price + Money.From(1) })],
        };
        AssertCosts(Good.Cost.Amount + Good.Buy.Sum(one => one.Quantity), dearer);
    }

    [Fact]
    public void A_thinner_blade_costs_nothing() =>
        AssertCosts(Good.Cost.Amount, Before with { Saw = Before.Saw with { Kerf = Some.Of("3/32") } });

    [Fact]
    public void A_thicker_blade_still_gives_a_whole_plan()
    {
        var plan = Again(Before with { Saw = new(Some.Of("1/4"), Some.Of("1/2"), Some.Of("1/4")) });
        Assert.Empty(plan.Unplaced);
    }

    [Fact]
    public void Parts_under_other_names_are_the_same_wood() =>
        AssertCosts(
            Good.Cost.Amount,
            Before with
            {
                Parts = [.. Before.Parts.Select(part => part with { Id = "new " + part.Id })],
            }
        );

    [Fact]
    public void Stock_under_another_name_is_found_by_its_size() =>
        AssertCosts(
            Good.Cost.Amount,
            Before with
            {
                Stock = [.. Before.Stock.Select(stock => stock with { Id = "new " + stock.Id })],
            }
        );

    [Fact]
    public void Stock_that_is_scarce_now_is_not_cut_more_often_than_it_is_there()
    {
        var scarce = Before with
        {
            Stock = [Before.Stock[0] with { Quantity = 4 }, .. Before.Stock[1..], Some.Stock("long", "120", price: 9)],
        };
        Assert.Empty(Again(scarce).Unplaced);
    }

    [Fact]
    public void Turned_pieces_whose_grain_matters_now_are_placed_anew()
    {
        var straight = Before with { Parts = [.. Before.Parts.Select(part => part with { Grain = Grain.Length })] };
        Assert.Contains(Good.AllPieces(), piece => piece.Turned);
        var pieces = Again(straight).AllPieces();
        Assert.Equal(Before.Parts.Sum(part => part.Quantity), pieces.Length);
        Assert.DoesNotContain(pieces, piece => piece.Turned);
    }

    [Fact]
    public void The_first_plan_cuts_nearly_all_sheets_and_boards_as_before()
    {
        var edited = Edited("P0", one => one with { Quantity = one.Quantity + 1 }) with { Keep = new(null, null, null) };
        var after = Some.Planned(
            edited,
            new SearchControl
            {
                Time = TimeSpan.FromMinutes(1),
                Cancel = new(canceled: true),
                Earlier = new(Before, Good),
            }
        );
        var (before, now) = (Contents(Good), Contents(after));
        var same = before.Sum(one => Math.Min(one.Value, now.GetValueOrDefault(one.Key)));
        Assert.True(same >= before.Values.Sum() - 2, $"{same} of {before.Values.Sum()} are cut as before");
    }

    [Fact]
    public void The_same_edit_seed_and_rounds_give_the_same_plan()
    {
        var edited = Edited("P3", one => one with { Quantity = 4 });
        var control = new SearchControl
        {
            Iterations = 200,
            Workers = 1,
            Seed = 5,
            Earlier = new(Before, Good),
        };
        Assert.Equal(Contents(Some.Planned(edited, control)), Contents(Some.Planned(edited, control)));
    }

    private static CutRequest Edited(string id, Func<CutPart, CutPart> edit) =>
        Before with
        {
            Parts = [.. Before.Parts.Select(part => part.Id == id ? edit(part) : part)],
        };

    private static CutPlan Again(CutRequest after) => Some.Planned(after, OneRound with { Earlier = new(Before, Good) });

    private static void AssertCosts(decimal most, CutRequest after)
    {
        var plan = Again(after);
        Assert.Empty(plan.Unplaced);
        Assert.True(plan.Cost.Amount <= most, $"{plan.Cost.Amount} is more than {most}");
    }

    private static Dictionary<string, int> Contents(CutPlan plan) =>
        plan
            .Layouts.GroupBy(layout =>
                layout.Stock + ": " + string.Join(' ', layout.Pieces.Select(piece => piece.Part).Order(StringComparer.Ordinal))
            )
            .ToDictionary(alike => alike.Key, alike => alike.Sum(layout => layout.Copies));
}
