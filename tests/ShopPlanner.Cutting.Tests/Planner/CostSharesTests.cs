using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>A plan's cost by project, worked out by hand. Part <c>P1</c> belongs to project <c>P</c>.</summary>
public sealed class CostSharesTests
{
    // $8.00 by 30 and 60 in of one width: 2.666… and 5.333…, the missing cent to the larger remainder.
    [Fact]
    public void A_board_is_shared_by_the_length_cut_from_it() =>
        Assert.Equal([("P", 2.67m), ("Q", 5.33m)], Of("PQ", Board(8, "P1:30", "Q1:60")));

    [Fact]
    public void One_project_bears_all() => Assert.Equal([("P", 13.37m)], Of("P", Board(13.37m, "P1:3", "P2:7")));

    [Fact]
    public void Equal_shares_differ_by_a_cent_at_most_and_the_first_bears_it() =>
        Assert.Equal([("P", 3.34m), ("Q", 3.33m), ("R", 3.33m)], Of("PQR", Board(10, "P1:5", "Q1:5", "R1:5")));

    // Half a cent and half a cent is a cent each; rounded board by board the first would pay both.
    [Fact]
    public void Nothing_is_rounded_before_the_end() =>
        Assert.Equal([("P", 0.01m), ("Q", 0.01m)], Of("PQ", Board(0.01m, "P1:5", "Q1:5"), Board(0.01m, "P1:5", "Q1:5")));

    [Fact]
    public void What_is_on_hand_costs_nothing_and_copies_cost_each() =>
        Assert.Equal([("P", 12m), ("Q", 0m)], Of("PQ", Board(6, "P1:30") with { Copies = 2 }, Board(0, "Q1:30", "Q2:20")));

    [Fact]
    public void A_sum_that_is_not_whole_cents_is_shared_in_the_smallest_count() =>
        Assert.Equal([("P", 0.293m), ("Q", 0.5861m)], Of("PQ", Board(0.8791m, "P1:1", "Q1:2")));

    [Fact]
    public void A_project_without_a_piece_in_the_plan_costs_nothing() =>
        Assert.Equal([("R", 0m), ("P", 5m)], Of("RP", Board(5, "P1:30")));

    [Fact]
    public void Shares_add_up_and_lie_within_a_cent_of_the_exact_ones()
    {
        var random = new Random(11);
        for (var n = 0; n < 500; n++)
        {
            var boards = Enumerable.Range(0, random.Next(1, 9)).Select(_ => RandomBoard(random)).ToArray();
            var shares = Of("PQRS", boards);
            Assert.Equal(boards.Sum(board => board.Price * board.Copies), shares.Sum(share => share.Cost));
            Assert.All(shares, share => Assert.InRange(share.Cost - Exact(share.Owner, boards), -0.01m, 0.01m));
        }
    }

    private static GivenBoard RandomBoard(Random random)
    {
        var pieces = Enumerable.Range(0, random.Next(1, 7)).Select(i => $"{"PQRS"[random.Next(4)]}{i}:{random.Next(1, 97)}");
        return new(random.Next(0, 4000) / 100m, random.Next(1, 4), [.. pieces]);
    }

    private static decimal Exact(string owner, GivenBoard[] boards) =>
        boards.Sum(board =>
            board.Price
            * board.Copies
            * board.Pieces.Where(piece => piece[..1] == owner).Sum(LengthOf)
            / board.Pieces.Sum(LengthOf)
        );

    private static decimal LengthOf(string piece) => Some.Of(piece.Split(':')[1]).ToInches();

    private static GivenBoard Board(decimal price, params string[] pieces) => new(price, 1, pieces);

    private static List<(string Owner, decimal Cost)> Of(string owners, params GivenBoard[] boards)
    {
        var request = Some.Request(
            [Some.Board()],
            boards.Select((board, i) => Some.Stock($"s{i}", "480", price: board.Price)),
            boards
                .SelectMany(board => board.Pieces)
                .Select(piece => piece.Split(':')[0])
                .Distinct()
                .Select(id => Some.Part(id, "1"))
        );
        var plan = new CutPlan(
            LengthUnit.Inch,
            PlanStatus.BestFound,
            Money.Zero,
            Money.Zero,
            1,
            [],
            [.. boards.Select((board, i) => new Layout($"s{i}", board.Copies, [.. board.Pieces.Select(Placed)], [], []))],
            []
        );
        return
        [
            .. CostShares
                .Of(request, plan, [.. owners.Select(owner => owner.ToString())], part => part[..1])
                .Select(share => (share.Owner, share.Cost.Amount)),
        ];
    }

    private static PlacedPiece Placed(string piece) =>
        new(piece.Split(':')[0], Length.Zero, Length.Zero, Some.Of(piece.Split(':')[1]), Some.Of("2 1/2"), Turned: false);

    private sealed record GivenBoard(decimal Price, int Copies, string[] Pieces);
}
