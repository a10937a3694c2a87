using Google.OrTools.Sat;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// Small board requests against a plain model for a general solver (OR-Tools CP-SAT) that shares nothing with the planner: each
/// piece lies on at most one board, first as few pieces as possible are left over, then the boards cost as little as possible.
/// </summary>
public sealed class AssignmentModelTests
{
    private const int Requests = 200;
    private static readonly SearchControl Enough = new() { Time = TimeSpan.FromSeconds(20) };

    [Fact]
    public void Two_hundred_small_requests_agree()
    {
        var random = new Random(20_260);
        for (var n = 0; n < Requests; n++)
        {
            var request = Random(random);
            var plan = Some.Planned(request, Enough);
            Assert.Equal(Best(request), (plan.Unplaced.Sum(part => part.Quantity), plan.Cost));
            if (plan.Unplaced.IsEmpty)
                Assert.Equal(PlanStatus.Proven, plan.Status);
        }
    }

    private static CutRequest Random(Random random)
    {
        var parts = Enumerable
            .Range(0, random.Next(1, 5))
            .Select(i => Some.Part($"P{i}", $"{random.Next(60, 800)}/16", random.Next(1, 4)));
        var stock = Enumerable
            .Range(0, random.Next(1, 4))
            .Select(i =>
                random.Next(3) == 0
                    ? Some.Stock($"B{i}", $"{random.Next(100, 900)}/16", quantity: random.Next(1, 3), offcut: true)
                    : Some.Stock(
                        $"S{i}",
                        $"{random.Next(50, 97)}",
                        price: random.Next(1, 30),
                        quantity: random.Next(3) == 0 ? random.Next(1, 3) : null
                    )
            );
        string[] kerfs = ["0", "1/8", "3/32", "3 mm"];
        string[] trims = ["0", "1/16", "1/2"];
        return Some.Request([Some.Board()], stock, parts, kerfs[random.Next(4)], trims[random.Next(3)]);
    }

    private static (int LeftOver, Money Cost) Best(CutRequest request)
    {
        var pieces = request.Parts.SelectMany(part => Enumerable.Repeat(part.Length.Ticks, part.Quantity)).ToList();
        var boards = request
            .Stock.SelectMany(stock => Enumerable.Repeat(stock, Math.Min(pieces.Count, stock.Quantity ?? pieces.Count)))
            .ToList();
        var model = new CpModel();
        var opened = boards.Select((_, b) => model.NewBoolVar($"open{b}")).ToList();
        var lies = pieces.Select((_, p) => boards.Select((_, b) => model.NewBoolVar($"{p}on{b}")).ToList()).ToList();
        foreach (var places in lies.Where(places => places.Count > 0))
            model.AddAtMostOne(places);
        for (var b = 0; b < boards.Count; b++)
        {
            var load = LinearExpr.WeightedSum(
                lies.Select(places => places[b]),
                pieces.Select(piece => piece + request.Saw.Kerf.Ticks)
            );
            model.Add(load <= opened[b] * Room(request, boards[b]));
        }

        return Solve(model, [.. lies.SelectMany(places => places)], opened, boards, pieces.Count);
    }

    // n pieces in a row have n - 1 kerfs between them; the end trim of a new board has its own kerf in it.
    private static long Room(CutRequest request, CutStock stock) =>
        stock.Length.Ticks - (stock.Offcut ? 0 : request.Saw.BoardEndTrim.Ticks) + request.Saw.Kerf.Ticks;

    private static (int LeftOver, Money Cost) Solve(
        CpModel model,
        List<BoolVar> lies,
        List<BoolVar> opened,
        List<CutStock> boards,
        int pieces
    )
    {
        var prices = boards.Select(board => board.Price.Count).ToList();
        var dear = 1 + prices.Sum();
        model.Minimize(LinearExpr.WeightedSum(opened, prices) - (dear * LinearExpr.Sum(lies)));
        using var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        var placed = lies.Count(solver.BooleanValue);
        return (pieces - placed, Money.FromCount(opened.Select((open, b) => solver.BooleanValue(open) ? prices[b] : 0).Sum()));
    }
}
