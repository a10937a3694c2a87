using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using static ShopPlanner.Cutting.Tests.Sheets.Problems;

namespace ShopPlanner.Cutting.Tests.Sheets;

/// <summary>Tiny jobs that a short search was seen to miss; the least cost is that of trying every cut.</summary>
public class HardTinyTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Two_nearly_full_sheets_are_found(int seed)
    {
        var problem = new SheetProblem(
            [new(5, 6, 3, null, false), new(4, 4, 3, null, false)],
            [new(3, 4, true, 2), new(3, 5, true, 1), new(1, 4, false, 1), new(4, 3, false, 1)]
        );
        var solution = Solved(problem, Rounds(30_000) with { Seed = seed });
        Assert.Equal(new EveryCut(problem).LeastCost(), solution.Cost);
    }
}
