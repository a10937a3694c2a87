using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.Verification;

/// <summary>Arrangements drawn by hand.</summary>
public sealed class GeometryTests
{
    // Four parts around a hole, like the sails of a windmill: they do not overlap, yet no straight cut frees the first of them.
    [Fact]
    public void A_windmill_cannot_be_cut()
    {
        var windmill = Check(
            Piece("A", 0, 0, 20, 10),
            Piece("B", 20, 0, 10, 20),
            Piece("C", 10, 20, 20, 10),
            Piece("D", 0, 10, 10, 20)
        );
        Assert.Contains(windmill, fault => fault.Message.Contains("cannot be freed by straight cuts", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_parts_in_rows_can_be_cut()
    {
        var rows = Check(
            Piece("A", 0, 0, 20, 10),
            Piece("B", 20, 0, 10, 20),
            Piece("C", 0, 20, 20, 10),
            Piece("D", 30, 0, 10, 20)
        );
        Assert.DoesNotContain(rows, fault => fault.Message.Contains("cannot be freed", StringComparison.Ordinal));
    }

    [Fact]
    public void A_new_board_needs_one_squared_end()
    {
        var request = Some.Request([Some.Board()], [Some.Stock("s", "96", price: 6)], [Some.Part("A", "95 1/2")], endTrim: "1/2");
        var plan = Some.Planned(request);
        var moved = plan.Piece("A", piece => piece with { X = Some.Of("1/4") });
        Assert.Contains(
            PlanVerifier.Check(request, moved),
            fault => fault.Message.Contains("no end squared", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_board_of_thousands_of_pieces_is_checked()
    {
        var request = Some.Request(
            [Some.Board()],
            [Some.Stock("s", "3900", price: 6)],
            [Some.Part("A", "1/4", 10_000)],
            keep: new(null, null, null)
        );
        Assert.Equal(10_000, Some.Planned(request).AllPieces().Length);
    }

    private static ImmutableArray<Fault> Check(params PlacedPiece[] pieces)
    {
        var request = Some.Request(
            [Some.Sheet()],
            [Some.Stock("s", "48", "48", 9, material: "ply")],
            pieces.Select(piece => new CutPart(piece.Part, piece.Part, "ply", piece.Dx, piece.Dy, Grain.Length, 1)),
            kerf: "0"
        );
        var plan = new CutPlan(
            LengthUnit.Inch,
            PlanStatus.Proven,
            Money.From(9),
            Money.From(9),
            0,
            [new("s", 1, Money.From(9))],
            [new("s", 1, [.. pieces], [], [])],
            []
        );
        return PlanVerifier.Check(request, plan);
    }

    private static PlacedPiece Piece(string part, int x, int y, int dx, int dy) =>
        new(part, Length.FromInches(x), Length.FromInches(y), Length.FromInches(dx), Length.FromInches(dy), false);
}
