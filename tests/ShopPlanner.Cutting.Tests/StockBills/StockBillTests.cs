using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.StockBills;

/// <summary>Real stock bills, planned from common boards and sheets: every piece is placed or reported for the right reason.</summary>
public sealed class StockBillTests
{
    private static readonly SearchControl Rounds = new() { Iterations = 300, Workers = 1 };

    public static MatrixTheoryData<string, WidePieces> Bills => new([.. StockBill.All.Keys], Enum.GetValues<WidePieces>());

    [Fact]
    public void There_are_ten_bills_each_with_its_pieces_and_its_book()
    {
        Assert.Equal(10, StockBill.All.Count);
        foreach (var bill in StockBill.All.Values)
        {
            Assert.InRange(bill.Pieces.Length, 3, 30);
            Assert.Contains("Project Gutenberg", bill.Source, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Bills))]
    public void A_bill_is_bought_and_cut(string title, WidePieces wide) => Check(StockBill.All[title], wide);

    // By hand: the top, 17 in wide, is glued up. Of the legs two lie beside each other across the board's 11 1/4 in, so four take two
    // rows of 18 1/2 in, which leave 10 1/4 in of a board of 4 ft, too short for a stretcher, and a strip too narrow for one. In
    // 8 ft all four stretchers lie beside each other behind the legs. Planed from 1 1/4 in: 1 1/4 x 12 in x 8 ft are 10 board feet.
    [Fact]
    public void A_tabouret_without_its_top_takes_eight_feet_of_board()
    {
        var plan = Some.Planned(BillRequest.Of(StockBill.All["Tabouret"], WidePieces.FromBoards), Rounds);
        Assert.Equal(("P0", 1), (Assert.Single(plan.Unplaced).Part, plan.Unplaced[0].Quantity));
        Assert.Equal(Money.From(10), plan.Cost);
        Assert.Equal(plan.Cost, plan.CostLowerBound);
    }

    private static void Check(StockBill bill, WidePieces wide)
    {
        var request = BillRequest.Of(bill, wide);
        var plan = Some.Planned(request, Rounds);
        Assert.NotEmpty(request.Parts);
        Assert.All(request.Parts, part => Placed(request, plan, part));
        Assert.True(plan.CostLowerBound <= plan.Cost, bill.Title);
        Assert.True(
            Least(bill, plan) <= plan.Cost.Amount,
            $"{bill.Title}: {plan.Cost} board feet bought for {Least(bill, plan)} of pieces"
        );
        Assert.Equal(!plan.Unplaced.IsEmpty, plan.Status == PlanStatus.Incomplete);
        if (wide == WidePieces.FromStrips)
            Assert.Empty(plan.Unplaced);
    }

    private static void Placed(CutRequest request, CutPlan plan, CutPart part)
    {
        var board = request.Materials.Single(material => material.Id == part.Material).Form == StockForm.Board;
        var glued = board && part.Width > BillRequest.WidestBoard;
        Assert.Equal(glued ? 0 : part.Quantity, plan.AllPieces().Count(piece => piece.Part == part.Id));
        if (!glued)
            return;
        var reason = Assert.Single(plan.Unplaced, one => one.Part == part.Id && one.Quantity == part.Quantity).Reason;
        Assert.StartsWith("wider than any stock of this material: ", reason, StringComparison.Ordinal);
        Assert.EndsWith(", 11 1/4 in usable: glue it up from strips", reason, StringComparison.Ordinal);
    }

    // The wood of the pieces that are placed, at the thickness of the bill: planing takes the rest.
    private static decimal Least(StockBill bill, CutPlan plan)
    {
        var unplaced = plan.Unplaced.Select(one => one.Part).ToHashSet();
        return bill.Pieces.Where((_, i) => !unplaced.Contains($"P{i}")).Sum(piece => piece.Volume.ToBoardFeet());
    }
}
