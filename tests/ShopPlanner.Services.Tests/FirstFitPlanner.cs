using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Tests;

/// <summary>A quick planner for boards: each piece goes on the first stock that has room, what is on hand first. Not good, but sound;
/// a test may hook in before and after.</summary>
internal sealed class FirstFitPlanner : ICutPlanner
{
    public Action<CutRequest, SearchControl>? Before { get; set; }

    public ImmutableArray<Fault> Faults { get; set; } = [];

    /// <summary>Whether it finds nothing, as when it is stopped at once.</summary>
    public bool Empty { get; set; }

    public int Runs { get; private set; }

    public string Version => "first fit for tests";

    public CutPlan Plan(CutRequest request, SearchControl control)
    {
        Runs++;
        Before?.Invoke(request, control);
        var boards = new List<Board>();
        if (Empty)
            return new CutPlan(request.Unit, PlanStatus.Incomplete, Money.Zero, Money.Zero, 0.01, [], [], []);
        var unplaced = ImmutableArray.CreateBuilder<UnplacedPart>();
        foreach (var part in request.Parts)
        {
            var missed = Enumerable.Range(0, part.Quantity).Count(_ => !Place(part, request, boards));
            if (missed > 0)
                unplaced.Add(new UnplacedPart(part.Id, missed, "longer than any stock of this material"));
        }

        var cost = boards.Aggregate(Money.Zero, (sum, board) => sum + board.Stock.Price);
        var buy = boards
            .Where(board => !board.Stock.Offcut)
            .GroupBy(board => board.Stock)
            .Select(same => new Purchase(same.Key.Id, same.Count(), same.Key.Price * same.Count()));
        return new CutPlan(
            request.Unit,
            unplaced.Count > 0 ? PlanStatus.Incomplete : PlanStatus.BestFound,
            cost,
            Money.Zero,
            0.01,
            [.. buy],
            [.. boards.Select(board => board.Layout(request.Saw.Kerf, request.Store?.Most ?? 0))],
            unplaced.ToImmutable()
        );
    }

    public ImmutableArray<Fault> Check(CutRequest request, CutPlan plan) => Faults;

    private static bool Place(CutPart part, CutRequest request, List<Board> boards)
    {
        if (boards.FirstOrDefault(board => board.Takes(part)) is { } open)
        {
            open.Add(part, request.Saw.Kerf);
            return true;
        }

        var used = boards.Where(board => board.Stock.Offcut).Select(board => board.Stock.Id).ToHashSet();
        var stock = request
            .Stock.Where(stock => !used.Contains(stock.Id))
            .Select(stock => new Board(stock))
            .FirstOrDefault(board => board.Takes(part));
        if (stock is null)
            return false;
        boards.Add(stock);
        stock.Add(part, request.Saw.Kerf);
        return true;
    }

    private sealed class Board(CutStock stock)
    {
        private readonly List<PlacedPiece> pieces = [];
        private Length next;

        public CutStock Stock => stock;

        public bool Takes(CutPart part) =>
            part.Material == stock.Material && next + part.Length <= stock.Length && part.Width <= stock.Width;

        public void Add(CutPart part, Length kerf)
        {
            pieces.Add(new PlacedPiece(part.Id, next, Length.Zero, part.Length, part.Width, false));
            next += part.Length + kerf;
        }

        public Layout Layout(Length kerf, int storeCuts)
        {
            var cuts = pieces.Select(
                (piece, i) =>
                    new Cut(
                        i + 1,
                        i == 0 ? "board" : $"{i}b",
                        CutKind.Crosscut,
                        piece.Dx,
                        $"{i + 1}a",
                        $"{i + 1}b",
                        piece.Part,
                        null
                    )
                    {
                        ByStore = !stock.Offcut && i < storeCuts,
                    }
            );
            var left = stock.Length - next;
            ImmutableArray<Leftover> leftovers = left > kerf ? [new Leftover(next, Length.Zero, left, stock.Width, true)] : [];
            return new Layout(stock.Id, 1, [.. pieces], leftovers, [.. cuts]);
        }
    }
}
