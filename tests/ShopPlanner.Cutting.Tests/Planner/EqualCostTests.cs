using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>What is chosen among plans of equal cost, on cases small enough to be worked out by hand: more of the bin used up, less new
/// stock opened. Also where the first look has proven the cost already.</summary>
public sealed class EqualCostTests
{
    private static readonly KeepRule KeepNone = new(null, null, null);

    // Each offcut of 36 takes one leg of 26 or two rails of 16 1/2: 26 + 33 is the most that can come from the bin.
    [Fact]
    public void Boards_use_up_as_much_of_the_bin_as_can_be()
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Board()],
                [Some.Stock("new", "144", price: 73), Some.Stock("bin", "36", quantity: 2, offcut: true)],
                [Some.Part("leg", "26", 3), Some.Part("rail", "16 1/2", 2)],
                kerf: "0",
                keep: KeepNone
            )
        );
        Assert.Equal(PlanStatus.Proven, plan.Status);
        Assert.Equal(Some.Of("59"), FromBin(plan));
    }

    [Fact]
    public void Ripped_boards_do_so_too()
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Board(width: "4")],
                [Some.Stock("new", "96", "4", price: 33), Some.Stock("bin", "24", "4", quantity: 1, offcut: true)],
                [Some.Part("long", "44", width: "2 1/2"), Some.Part("short", "20", width: "2 1/2")],
                kerf: "0",
                keep: KeepNone
            )
        );
        Assert.Equal(Some.Of("20"), FromBin(plan));
    }

    [Fact]
    public void Sheets_do_so_too()
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Sheet()],
                [
                    Some.Stock("new", "60", "24", price: 28.93m, material: "ply"),
                    Some.Stock("bin", "20", "17", quantity: 3, offcut: true, material: "ply"),
                ],
                [
                    Some.Part("side", "32", width: "16", material: "ply"),
                    Some.Part("strip", "19 1/2", width: "3", material: "ply"),
                ],
                kerf: "0",
                keep: KeepNone
            )
        );
        Assert.Equal(Some.Of("19 1/2"), FromBin(plan));
    }

    [Fact]
    public void Without_prices_wood_is_saved_and_the_bin_comes_first()
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Board()],
                [Some.Stock("4 ft", "48"), Some.Stock("10 ft", "120"), Some.Stock("bin", "59 1/8", quantity: 1, offcut: true)],
                [Some.Part("A", "18 5/8", 3)],
                kerf: "0"
            )
        );
        Assert.Equal(("bin", 1), (Assert.Single(plan.Layouts).Stock, plan.Layouts[0].Copies));
        Assert.Equal((PlanStatus.Proven, Money.Zero, Money.Zero), (plan.Status, plan.Cost, plan.CostLowerBound));
    }

    // Three parts of 40: one of 10 ft takes all, as much wood as two and a half of 4 ft.
    [Theory]
    [InlineData("40", 3, "10 ft", 1)]
    [InlineData("40", 1, "4 ft", 1)]
    [InlineData("47", 2, "4 ft", 2)]
    public void Without_prices_the_least_wood_is_opened(string length, int quantity, string stock, int copies)
    {
        var plan = Some.Planned(
            Some.Request(
                [Some.Board()],
                [Some.Stock("4 ft", "48"), Some.Stock("10 ft", "120")],
                [Some.Part("A", length, quantity)],
                kerf: "0"
            )
        );
        Assert.Equal(
            [(stock, copies)],
            plan.Layouts.GroupBy(one => one.Stock).Select(one => (one.Key, one.Sum(two => two.Copies)))
        );
    }

    private static Length FromBin(CutPlan plan) =>
        plan
            .Layouts.Where(layout => layout.Stock == "bin")
            .SelectMany(layout => Enumerable.Repeat(layout.Pieces, layout.Copies).SelectMany(pieces => pieces))
            .Aggregate(Length.Zero, (sum, piece) => sum + piece.Dx);
}
