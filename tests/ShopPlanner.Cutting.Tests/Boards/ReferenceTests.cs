using Google.OrTools.Sat;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Cutting.Tests.Boards;

/// <summary>An independent model, each piece assigned to one stock, solved by a general solver.</summary>
public class ReferenceTests
{
    [Fact]
    public void A_hundred_small_problems_agree_with_the_assignment_model()
    {
        var random = new Random(31);
        for (var n = 0; n < 100; n++)
        {
            var problem = Some.Random(random, 5, 2, true);
            Assert.Equal(ByAssignment(problem), Some.Solve(problem).Cost);
        }
    }

    private static long ByAssignment(BoardProblem problem)
    {
        var model = new CpModel();
        var pieces = problem.Items.SelectMany(item => Enumerable.Repeat(item.Size, item.Demand)).ToList();
        var boards = problem
            .Stocks.SelectMany(stock => Enumerable.Repeat(stock, Math.Min(pieces.Count, stock.Available ?? int.MaxValue)))
            .ToList();
        var opened = boards.Select((_, b) => model.NewBoolVar($"open{b}")).ToList();
        var assigned = pieces.Select((_, p) => boards.Select((_, b) => model.NewBoolVar($"{p}on{b}")).ToList()).ToList();
        foreach (var choice in assigned)
            model.AddExactlyOne(choice);
        for (var b = 0; b < boards.Count; b++)
        {
            var load = LinearExpr.WeightedSum(assigned.Select(choice => choice[b]), pieces);
            model.Add(load <= opened[b] * boards[b].Capacity);
        }

        model.Minimize(LinearExpr.WeightedSum(opened, boards.Select(board => board.Cost)));
        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return (long)Math.Round(solver.ObjectiveValue);
    }
}
