using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Sheets.Search;
using ShopPlanner.Cutting.Trees;

namespace ShopPlanner.Cutting.Tests.Sheets;

/// <summary>What the covering model may choose from.</summary>
public sealed class PatternPoolTests
{
    [Fact]
    public void A_sheet_that_a_search_has_just_emptied_is_no_layout()
    {
        var problem = new SheetProblem([new(100, 50, 1, null, false)], [new(20, 10, false, 2)]);
        var pool = new PatternPool(SheetModel.From(problem));
        pool.Add(new CutTree());
        Assert.Equal(0, pool.Count);
    }
}
