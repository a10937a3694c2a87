using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Tests.Planner;
using ShopPlanner.Cutting.Together;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.Together;

/// <summary>Parts that are wanted only if they come free, worked out by hand.</summary>
public sealed class SpareFillingTests
{
    // Of 96 in, 80 and a kerf are taken: 15 7/8 in are left. Three of 5 in with their kerfs are 15 3/8.
    private static readonly CutRequest Board = Some.Request(
        [Some.Board()],
        [Some.Stock("b8", "96", price: 9.6m)],
        [Some.Part("A", "80")],
        keep: new(Some.Of("30"), null, null)
    );

    [Fact]
    public void Scrap_becomes_as_many_as_find_room() => Assert.Equal(3, PiecesOf(Fill(Board, Spare("S", "5", 8, 0)), "S"));

    [Fact]
    public void The_most_valuable_come_first()
    {
        var filled = Fill(Board, Spare("S", "5", 8, 1), Spare("T", "10", 8, 3));
        Assert.Equal((1, 1), (PiecesOf(filled, "T"), PiecesOf(filled, "S")));
    }

    [Fact]
    public void Nothing_is_bought_for_them_and_nothing_that_was_wanted_goes()
    {
        var filled = Fill(Board, Spare("S", "16", 5, 1000));
        Assert.Equal((0, 9.6m), (PiecesOf(filled, "S"), filled.Plan.Cost.Amount));
        Assert.Equal(Board, filled.Request);
    }

    // An offcut of 35 7/8 in is worth keeping: 3.5875 of 9.60. One spare of 10 in leaves 25 3/4, which is too short to keep, so it
    // takes all of that away.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(3.58, 0)]
    [InlineData(3.59, 1)]
    public void An_offcut_is_given_up_for_what_is_worth_as_much(decimal worth, int pieces)
    {
        var request = Board with { Parts = [Some.Part("A", "60")] };
        Assert.Equal(pieces, PiecesOf(Fill(request, Spare("S", "10", 1, worth)), "S"));
    }

    // What remains is kept still: 35 7/8 less 4 in and a kerf is 31 3/4; the 4 1/8 in that it loses are worth 0.4125.
    [Theory]
    [InlineData(0.41, 0)]
    [InlineData(0.42, 1)]
    public void What_remains_to_keep_counts(decimal worth, int pieces)
    {
        var request = Board with { Parts = [Some.Part("A", "60")] };
        Assert.Equal(pieces, PiecesOf(Fill(request, Spare("S", "4", 1, worth)), "S"));
    }

    [Fact]
    public void Wood_without_a_price_loses_none_of_its_offcuts()
    {
        var request = Board with { Parts = [Some.Part("A", "60")], Stock = [Some.Stock("r1", "96", quantity: 1, offcut: true)] };
        Assert.Equal(0, PiecesOf(Fill(request, Spare("S", "10", 1, 1000)), "S"));
    }

    [Fact]
    public void Parts_without_a_place_go_first()
    {
        var request = Board with { Parts = [Some.Part("A", "80"), Some.Part("B", "100")] };
        var filled = Fill(request, Spare("S", "5", 2, 0));
        Assert.Equal((0, "B"), (PiecesOf(filled, "S"), filled.Plan.Unplaced.Single().Part));
    }

    [Fact]
    public void Random_plans_cost_no_more_with_spare_parts_and_can_be_cut()
    {
        foreach (var request in RandomRequests.From(seed: 77, count: 25))
        {
            var before = Some.Planned(request, Brief);
            var material = request.Materials[^1];
            var width = material.Width ?? Some.Of("5");
            var spare = new SparePart(
                new CutPart("S", "slat", material.Id, Some.Of("9"), width, Grain.Length, 6),
                Money.From(0.5m)
            );
            var filled = SpareFilling.Fill(request, before, [spare], TimeSpan.FromMilliseconds(200), Plan);
            Assert.Empty(PlanVerifier.Check(filled.Request, filled.Plan));
            Assert.True(filled.Plan.Cost <= before.Cost);
            Assert.Equal(request.Parts, filled.Request.Parts.Where(part => part.Id != "S"));
        }
    }

    private static readonly SearchControl Brief = new() { Time = TimeSpan.FromMilliseconds(60), Workers = 1 };

    private static SparePart Spare(string id, string length, int quantity, decimal worth) =>
        new(Some.Part(id, length, quantity), Money.From(worth));

    private static SparedPlan Fill(CutRequest request, params SparePart[] spares)
    {
        var filled = SpareFilling.Fill(request, Some.Planned(request, Brief), spares, TimeSpan.FromSeconds(5), Plan);
        Assert.Empty(PlanVerifier.Check(filled.Request, filled.Plan));
        return filled;
    }

    private static CutPlan Plan(CutRequest request, EarlierPlan earlier, TimeSpan? time) =>
        CutPlanner.Plan(
            request,
            new SearchControl
            {
                Time = TimeSpan.FromMilliseconds(60),
                Workers = 1,
                Earlier = earlier,
            }
        );

    private static int PiecesOf(SparedPlan filled, string part) =>
        filled.Plan.Layouts.Sum(layout => layout.Copies * layout.Pieces.Count(piece => piece.Part == part));
}
