using System.Globalization;
using Google.OrTools.Sat;
using ShopPlanner.Cutting.Boards;
using ShopPlanner.Cutting.Problems;

namespace ShopPlanner.Benchmarks;

/// <summary>
/// Bin packing as textbooks first write it: a Boolean says that a piece lies in a bin, another that the bin is used; every piece
/// lies in one bin, no bin is overfilled, and the bins used cost least. Nothing is added against bins or pieces that are alike,
/// no first answer is given: what the solver makes of that is its own.
/// </summary>
public sealed class AssignmentModel
{
    /// <summary>A model of more than these is not built: the solver would spend the time and the memory on reading it.</summary>
    public const long MostBooleans = 1_000_000;

    private readonly CpModel model = new();
    private readonly BoardProblem problem;
    private readonly List<int> bins;
    private readonly BoolVar[] used;
    private readonly List<(int Item, List<(int Bin, BoolVar In)> Places)> pieces;

    private AssignmentModel(BoardProblem problem, List<int> bins)
    {
        (this.problem, this.bins) = (problem, bins);
        used = [.. bins.Select((_, bin) => model.NewBoolVar($"u{bin}"))];
        pieces = [.. problem.Items.SelectMany((item, i) => Enumerable.Range(0, item.Demand).Select(_ => Piece(i)))];
        foreach (var (_, places) in pieces)
            model.AddExactlyOne(places.Select(place => place.In));
        Fill();
        model.Minimize(LinearExpr.WeightedSum(used, bins.Select(stock => problem.Stocks[stock].Cost)));
    }

    /// <summary>Null where the model would be too large or nothing was found within the seconds, building included.</summary>
    public static BoardSolution? Solve(BoardProblem problem, double seconds, int workers)
    {
        var end = DateTime.UtcNow.AddSeconds(seconds);
        var bins = Bins(problem);
        if (problem.Items.Sum(item => (long)item.Demand) * bins.Count > MostBooleans)
            return null;
        var model = new AssignmentModel(problem, bins);
        return model.Solve((end - DateTime.UtcNow).TotalSeconds, workers);
    }

    /// <summary>The stock of every bin that an answer as cheap as the rule of thumb's may use.</summary>
    private static List<int> Bins(BoardProblem problem)
    {
        var start = FirstFitDecreasing.Solve(problem);
        var pieces = problem.Items.Sum(item => (long)item.Demand);
        return [.. problem.Stocks.SelectMany((stock, s) => Enumerable.Repeat(s, (int)Limit(stock, pieces, start)))];
    }

    private static long Limit(BoardStock stock, long pieces, BoardSolution start)
    {
        var limit = Math.Min(stock.Available ?? pieces, pieces);
        return start.Complete && stock.Cost > 0 ? Math.Min(limit, start.Cost / stock.Cost) : limit;
    }

    private (int Item, List<(int Bin, BoolVar In)> Places) Piece(int item) =>
        (
            item,
            [
                .. Enumerable
                    .Range(0, bins.Count)
                    .Where(bin => Capacity(bin) >= problem.Items[item].Size)
                    .Select(bin => (bin, model.NewBoolVar(""))),
            ]
        );

    private long Capacity(int bin) => problem.Stocks[bins[bin]].Capacity;

    private void Fill()
    {
        var inside = (
            from piece in pieces
            from place in piece.Places
            select (place.Bin, place.In, problem.Items[piece.Item].Size)
        ).ToLookup(place => place.Bin);
        for (var bin = 0; bin < bins.Count; bin++)
        {
            var load = LinearExpr.WeightedSum(inside[bin].Select(place => place.In), inside[bin].Select(place => place.Size));
            model.Add(load <= Capacity(bin) * used[bin]);
        }
    }

    private BoardSolution? Solve(double seconds, int workers)
    {
        if (seconds <= 0)
            return null;
        using var solver = new CpSolver();
        solver.StringParameters = string.Create(
            CultureInfo.InvariantCulture,
            $"max_time_in_seconds:{seconds:0.000} num_workers:{workers} random_seed:1"
        );
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => Read(solver, proven: true),
            CpSolverStatus.Feasible => Read(solver, proven: false),
            _ => null,
        };
    }

    private BoardSolution Read(CpSolver solver, bool proven)
    {
        var bins = this.bins.ConvertAll(stock => new Bin(stock, problem.Items.Length));
        foreach (var (item, places) in pieces)
            bins[places.Find(place => solver.BooleanValue(place.In)).Bin].Add(item, problem.Items[item].Size);
        return BinSolution.Of(problem, bins, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), proven);
    }
}
