using CsCheck;
using ShopPlanner.Cutting.Problems;
using ShopPlanner.Cutting.Sheets;
using ShopPlanner.Cutting.Sheets.Bounds;
using ShopPlanner.Cutting.Sheets.Exact;
using ShopPlanner.Cutting.Sheets.Model;
using ShopPlanner.Cutting.Sheets.Packings;
using ShopPlanner.Cutting.Sheets.Search;
using ShopPlanner.Cutting.Sheets.Writing;
using ShopPlanner.Cutting.Steering;
using static ShopPlanner.Cutting.Tests.Sheets.Problems;

namespace ShopPlanner.Cutting.Tests.Sheets;

/// <summary>The method for few pieces, against trying every cut.</summary>
public class SmallJobTests
{
    [Fact]
    public void Tiny_jobs_come_to_the_least_cost() => CompareAll(Tiny);

    // With a kerf of 2 the sides of stock and pieces are longer by it, as the contract of the problem says.
    [Fact]
    public void A_kerf_changes_nothing_about_that() => CompareAll(Tiny.Select(WithKerf));

    [Fact]
    public void A_job_that_cannot_be_cut_whole_places_the_most_area() =>
        Tiny.Select(Short)
            .Sample(
                problem =>
                {
                    var model = SheetModel.From(problem);
                    var answer = Job(model).PlaceMost(new Packing(model), Clock);
                    Assert.True(answer.IsProven);
                    Assert.Equal(MostArea(problem), model.TotalArea - answer.Packing.LeftArea);
                },
                iter: 300,
                print: Text
            );

    [Fact]
    public void Tiny_jobs_are_proven_without_a_single_round() =>
        Tiny.Sample(
            problem =>
            {
                var solution = SheetSolver.Solve(problem, Rounds(0));
                LayoutRules.Check(problem, solution);
                Assert.True(solution.Proven);
            },
            iter: 300,
            print: Text
        );

    [Fact]
    public void Too_much_to_try_is_told()
    {
        var model = SheetModel.From(new([Sheet(100, 100)], [new(5, 7, true, 40), new(6, 9, true, 40)]));
        Assert.Null(SmallJob.Of(model, new WorkBudget(1_000_000, () => false)));
    }

    [Fact]
    public void More_types_than_numbers_reach_are_told()
    {
        var items = Enumerable.Range(1, 40).Select(i => new SheetItem(i, 100, true, 1));
        var model = SheetModel.From(new([Sheet(1000, 1000)], [.. items]));
        Assert.Null(SmallJob.Of(model, new WorkBudget(long.MaxValue, () => false)));
    }

    private static SearchClock Clock => new(new SearchControl());

    private static SmallJob Job(SheetModel model) => SmallJob.Of(model, new WorkBudget(100_000_000, () => false))!;

    private static void CompareAll(Gen<SheetProblem> problems)
    {
        var tried = 0;
        problems.Sample(problem => Interlocked.Add(ref tried, Compare(problem) ? 1 : 0), iter: 300, print: Text);
        Assert.True(tried > 150, $"only {tried} jobs could be cut whole");
    }

    /// <summary>False for a job that cannot be cut whole.</summary>
    private static bool Compare(SheetProblem problem)
    {
        if (new EveryCut(problem).LeastCost() is not { } least)
            return false;
        var model = SheetModel.From(problem);
        var answer = Job(model).Lower(Dear(model), Clock);
        Assert.True(answer.IsProven);
        Assert.Equal(least, answer.Packing.Cost);
        LayoutRules.Check(problem, new SolutionWriter(model).Write(answer.Packing, least));
        return true;
    }

    /// <summary>A first packing; the dearest one could be when the search's own does not place everything.</summary>
    private static Packing Dear(SheetModel model)
    {
        var packing = new Packing(model);
        foreach (var stock in model.Stocks)
        {
            for (var n = 0; n <= stock.Limit; n++)
                packing.NoteOpened(stock.Index);
        }
        return packing;
    }

    private static SheetProblem WithKerf(SheetProblem problem) =>
        new(
            [.. problem.Stocks.Select(s => s with { Dx = (s.Dx * 5) + 2, Dy = (s.Dy * 5) + 2 })],
            [.. problem.Items.Select(i => i with { Dx = Math.Max(1, (i.Dx * 5) - 1) + 2, Dy = Math.Max(1, (i.Dy * 5) - 2) + 2 })]
        );

    /// <summary>One sheet of the first stock, and pieces no larger.</summary>
    private static SheetProblem Short(SheetProblem problem)
    {
        var stock = problem.Stocks[0] with { Available = 1 };
        return new(
            [stock],
            [.. problem.Items.Select(i => i with { Dx = Math.Min(i.Dx, stock.Dx), Dy = Math.Min(i.Dy, stock.Dy) })]
        );
    }

    /// <summary>Over all choices of pieces that can be cut, in the search's measure.</summary>
    private static long MostArea(SheetProblem problem)
    {
        var model = SheetModel.From(problem);
        var sets = new PieceSets(model);
        return Enumerable.Range(0, (int)sets.Count).Max(set => Area(problem, model, sets, set));
    }

    private static long Area(SheetProblem problem, SheetModel model, PieceSets sets, int set)
    {
        var chosen = Enumerable.Range(0, sets.Types.Length).Where(p => sets.Has(set, p) > 0).ToList();
        var items = chosen.Select(p => problem.Items[model.Types[sets.Types[p]].Members[0]] with { Demand = sets.Has(set, p) });
        return new EveryCut(problem with { Items = [.. items] }).LeastCost() is null
            ? 0
            : chosen.Sum(p => sets.Has(set, p) * model.Types[sets.Types[p]].Area);
    }
}
