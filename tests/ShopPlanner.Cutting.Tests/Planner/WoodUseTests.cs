using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>What becomes of a plan's wood, worked out by hand in square inches.</summary>
public sealed class WoodUseTests
{
    [Fact]
    public void Boards_come_to_parts_offcuts_sawdust_and_scrap()
    {
        // Two pine boards of 96 × 2 1/2 are squared by 3/8 and a kerf, then cut at 30 three times: 5 1/8 in of each is scrap.
        // The oak offcut of 41 3/8 gives 20, and 21 1/4 to keep. Nine kerfs of 1/8 × 2 1/2, and two trims of 3/8 × 2 1/2.
        var stock = new[]
        {
            Some.Stock("new", "96", price: 6),
            Some.Stock("B1", "41 3/8", quantity: 1, offcut: true, material: "oak"),
        };
        var parts = new[] { Some.Part("A", "30", 6), Some.Part("C", "20", material: "oak") };
        var request = Some.Request([Some.Board(), Some.Board("oak")], stock, parts, endTrim: "1/2");
        var uses = WoodUse.Of(request, Some.Planned(request));
        Assert.Equal(["pine", "oak"], uses.Select(use => use.Material));
        Assert.Equal((480m, 450m, 0m, 30m, 25.625m, 4.375m), Inches(uses[0].Use));
        Assert.Equal((103.4375m, 50m, 53.125m, 0.3125m, 0m, 0.3125m), Inches(uses[1].Use));
        Assert.Equal((583.4375m, 500m, 53.125m, 30.3125m, 25.625m, 4.6875m), Inches(uses[0].Use + uses[1].Use));
    }

    [Fact]
    public void Sheets_are_counted_as_often_as_they_are_cut()
    {
        // 60 × 40: ripped at 20, and the strip crosscut at 50. 60 × 19 7/8 is kept, 9 7/8 × 20 is scrap; the kerfs take 60 and
        // 20 times 1/8.
        var use = Of(
            [Cut(1, "sheet", CutKind.Rip, "20", "1b"), Cut(2, "1a", CutKind.Crosscut, "50", "2b")],
            [Left("0", "20 1/8", "60", "19 7/8", keep: true), Left("50 1/8", "0", "9 7/8", "20", keep: false)],
            copies: 2
        );
        Assert.Equal((4800m, 2000m, 2385m, 415m, 395m, 20m), Inches(use));
    }

    [Fact]
    public void Materials_are_told_apart_in_the_order_of_the_request()
    {
        var request = Some.Request(
            [Some.Board("oak"), Some.Board("ash"), Some.Board()],
            [Some.Stock("p", "96", price: 6), Some.Stock("o", "96", price: 9, material: "oak")],
            [Some.Part("A", "31", 3), Some.Part("B", "31", 3, material: "oak")]
        );
        Assert.Equal(["oak", "pine"], WoodUse.Of(request, Some.Planned(request)).Select(use => use.Material));
    }

    // Parts and leftovers lie beside one another on the wood, so they never come to more than there is.
    [Fact]
    public void No_share_of_any_plan_is_less_than_nothing() =>
        PlanPropertyTests.Requests.Sample(
            request =>
            {
                var plan = Some.Planned(request, new SearchControl { Iterations = 20, Workers = 1 });
                foreach (var (_, use) in WoodUse.Of(request, plan))
                    Assert.True(use.Sawdust >= Area.Zero && use.Waste >= use.Scrap, $"{use}");
            },
            iter: 60,
            threads: 1
        );

    private static WoodUse Of(ImmutableArray<Cut> cuts, ImmutableArray<Leftover> leftovers, int copies)
    {
        var request = Some.Request(
            [Some.Sheet()],
            [Some.Stock("s", "60", "40", 30, material: "ply")],
            [Some.Part("A", "50", 1, "20", material: "ply")]
        );
        var piece = new PlacedPiece("A", Length.Zero, Length.Zero, Some.Of("50"), Some.Of("20"), Turned: false);
        var plan = new CutPlan(
            LengthUnit.Inch,
            PlanStatus.BestFound,
            Money.From(30),
            Money.Zero,
            1,
            [],
            [new Layout("s", copies, [piece], leftovers, cuts)],
            []
        );
        return Assert.Single(WoodUse.Of(request, plan)).Use;
    }

    private static Cut Cut(int n, string piece, CutKind kind, string at, string? second) =>
        new(n, piece, kind, Some.Of(at), $"{n}a", second, null, null);

    private static Leftover Left(string x, string y, string dx, string dy, bool keep) =>
        new(Some.Of(x), Some.Of(y), Some.Of(dx), Some.Of(dy), keep);

    private static (decimal Cut, decimal Parts, decimal Kept, decimal Waste, decimal Scrap, decimal Sawdust) Inches(WoodUse use)
    {
        static decimal Of(Area area) => Math.Round(area.ToSquareFeet() * 144, 6);
        return (Of(use.Cut), Of(use.Parts), Of(use.Kept), Of(use.Waste), Of(use.Scrap), Of(use.Sawdust));
    }
}
