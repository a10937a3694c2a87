using CsCheck;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using static ShopPlanner.Cutting.Tests.Sheets.Problems;

namespace ShopPlanner.Cutting.Tests.Sheets;

public class SheetSolverOptimumTests
{
    [Fact]
    public void Tiny_jobs_cost_what_trying_every_cut_finds() =>
        Tiny.Sample(
            problem =>
            {
                var solution = Solved(problem, Rounds(30_000));
                var least = new EveryCut(problem).LeastCost();
                Assert.Equal(least is not null, solution.Complete);
                if (least is { } cost)
                    Assert.Equal(cost, solution.Cost);
            },
            iter: 600,
            print: Text
        );

    // Macedo, Alves and Valério de Carvalho 2010, "Arc-flow model for the two-dimensional guillotine cutting stock problem":
    // orders A01 and A22 of furniture makers; the optima are proven for any number of stages.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Order_A01_of_a_furniture_maker_takes_three_sheets(bool turn)
    {
        var problem = new SheetProblem([Sheet(2750, 1220)], [new(1680, 420, turn, 6), new(463, 386, turn, 18)]);
        var solution = Solved(problem, Rounds(20_000));
        Assert.Equal((3L, true), (solution.Cost, solution.Proven));
    }
}
