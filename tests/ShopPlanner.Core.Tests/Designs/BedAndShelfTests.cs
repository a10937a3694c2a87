using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Pieces that carry people, and one that hangs: the bed, the outdoor bench and the floating shelf.</summary>
public sealed class BedAndShelfTests
{
    // 68 in less two posts of 3 1/2 in and 1/8 in at each end: slats of 60 3/4 in; side rails 88 - 7 = 81 in.
    [Fact]
    public void A_bed_fits_its_mattress_with_an_inch_to_spare()
    {
        var piece = Piece("bed");
        Assert.Equal(Made.Inches(60.75m), piece.Parts.Single(part => part.Name == "Bed slat").Length.Value);
        Assert.Equal(Made.Inches(81), piece.Parts.Single(part => part.Name == "Side rail").Length.Value);
        Assert.Equal(4, piece.Joints.Count(one => one.Kind == JointKind.Bolted && Made.NameOf(piece, one.From) == "Side rail"));
        Assert.Equal(8, piece.Hardware.Single(one => one.Name.StartsWith("Bed bolts", StringComparison.Ordinal)).Quantity);
    }

    // Slats 1 1/2 x 3 1/2 in on ledgers 1 1/2 in wide and a beam of 1 1/2 in: 29 1/4 - 1 1/2 + 1/8 in of span; 250 lb in its
    // middle give 6 x 250 x 27.875 / 4 / (3.5 x 1.5²) = 1,327 psi: under a quarter of the 8,600 psi at which clear
    // spruce-pine-fir breaks, over a tenth.
    [Fact]
    public void Slats_of_a_bed_are_judged_by_one_person()
    {
        var found = PieceJudge.Of(Piece("bed")).Single(one => one.Text.StartsWith("For the bed slat", StringComparison.Ordinal));
        Assert.Equal(Severity.Watch, found.Severity);
        Assert.InRange(found.Working!.Figure.Number(LengthUnit.Inch)!.Value, 1280, 1400);
    }

    // Check value of the shop's own book of oracles: 3/4 x 3 1/2 in over about 28 in takes more than 4,800 psi, which breaks it.
    [Fact]
    public void Slats_of_one_by_four_break()
    {
        var json = File.ReadAllText(DesignFiles.PathOf("bed"))
            .Replace("\"slat\": \"slat\"", "\"slat\": \"thin\"", StringComparison.Ordinal)
            .Replace(
                "\"materials\": [",
                "\"materials\": [ { \"role\": \"thin\", \"name\": \"1x4\", \"form\": \"board\", \"thickness\": \"3/4\", \"width\": \"3 1/2\", \"species\": \"spruce-pine-fir\" },",
                StringComparison.Ordinal
            );
        var found = PieceJudge.Of(Made.Piece(json)).First(one => one.Severity == Severity.Fails);
        Assert.StartsWith("A person can break the bed slat", found.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Legs_under_the_middle_beam_shorten_its_span()
    {
        var with = PieceJudge.Of(Piece("bed"));
        Assert.DoesNotContain(with, one => one.Severity == Severity.Fails);
        var json = File.ReadAllText(DesignFiles.PathOf("bed"))
            .Replace("\"foot_height\": \"foot\"", "\"foot_height\": \"foot\", \"beam_legs\": 0", StringComparison.Ordinal);
        Assert.Contains(PieceJudge.Of(Made.Piece(json)), one => one.Text.Contains("middle beam", StringComparison.Ordinal));
    }

    // 48 in for eight boards of 5 1/2 in: 4 in over seven gaps.
    [Fact]
    public void Boards_of_a_seat_have_equal_gaps_and_lie_on_both_long_beams()
    {
        var piece = Piece("outdoor-bench");
        var boards = piece.Copies("Seat board").Select(copy => copy.Box).OrderBy(box => box.X).ToList();
        Assert.Equal((8, Length.Zero, Made.Inches(48)), (boards.Count, boards[0].X, boards[^1].EndX));
        Assert.All(
            boards.Zip(boards.Skip(1)),
            pair => Assert.InRange((pair.Second.X - pair.First.EndX - Made.Inches(4m / 7)).Ticks, -1, 1)
        );
        Assert.All(
            piece.Copies("Seat board"),
            board =>
                Assert.True(piece.Joints.Count(one => one.From == board.Mark && Made.NameOf(piece, one.Into) == "Long beam") == 2)
        );
    }

    // 4 1/4 in less the shelf of 3/4 in: (3 1/2 + 3/4 - 1/8) / 2 in, to the sixteenth below: cleats of 2 1/16 in that share 3/4
    // in.
    [Fact]
    public void The_cleats_of_a_floating_shelf_share_their_bevel()
    {
        var piece = Piece("floating-shelf");
        var hung = piece.Joints.Single(one => one.Kind == JointKind.Beveled);
        Assert.Equal((Axis.Z, Made.Inches(0.75m)), (hung.Along, hung.Depth));
        var (shelf, wall) = (piece.Copies("Beveled shelf cleat").Single().Box, piece.Copies("Beveled wall cleat").Single().Box);
        Assert.Equal((Made.Inches(2.0625m), Made.Inches(2.0625m)), (shelf.Dz, wall.Dz));
        Assert.Equal(Made.Inches(0.5m), shelf.Dx - wall.Dx);
        Assert.True(wall.Z > Length.Zero);
        Assert.True(piece.IsFixedToWall);
    }

    // 29 lb/ft² on 36 x 5 1/2 in = 39.9 lb; with the bevel 1 13/16 in over the lower edge a pull of 39.9 x 2.75 / 1.8125 = 60.5 lb. 1/4 in
    // lags, 1 1/2 in of thread at 0.36: 206 lb (National Design Specification, 137 lb/in), sideways 83.7 lb: 2 x (39.9/83.7 + 60.5/206) =
    // 1.5, so two, one in each stud.
    [Fact]
    public void The_wall_cleat_has_screws_for_a_full_shelf()
    {
        var screws = Piece("floating-shelf").Hardware.Single(one => one.Name.StartsWith("Lag screws", StringComparison.Ordinal));
        Assert.Equal(2, screws.Quantity);
        var deep = DesignEvaluator
            .Evaluate(
                DesignFiles.Read("floating-shelf") with
                {
                    Dimensions =
                    [
                        .. DesignFiles.Read("floating-shelf").Dimensions.Select(one => one with { Least = null, Most = null }),
                    ],
                },
                new Dictionary<string, string> { ["width"] = "31", ["depth"] = "14" }
            )
            .Piece!;
        Assert.Contains(
            PieceJudge.Of(deep),
            one => one.Severity == Severity.Fails && one.Text.StartsWith("Full of books", StringComparison.Ordinal)
        );
        Assert.Contains(
            PieceJudge.Of(deep),
            one => one.Severity == Severity.Fails && one.Text.StartsWith("Only one stud", StringComparison.Ordinal)
        );
    }

    private static Piece Piece(string name) =>
        DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>()).Piece!;
}
