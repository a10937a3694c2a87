using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Bases under cases, breadboard ends, bolted and cross rails, and bearers of lengthwise slats, worked by
/// hand.</summary>
public sealed class BaseAndTopTests
{
    // The board is 2 1/2 in wide: the case begins there, and its sides are 27 1/2 in high. 36 in less 1 in at each end: 34 in; 14
    // in less 1 in in front and two boards: 11 1/2 in between them. 32 1/2 in between the ends take one board more.
    [Fact]
    public void A_plinth_lifts_the_case_by_its_board()
    {
        var piece = Made.Piece(Case("plinth"));
        Assert.All(
            piece.Copies("Side"),
            side => Assert.Equal((Made.Inches(2.5m), Made.Inches(27.5m)), (side.Box.Z, side.Box.Dz))
        );
        Assert.All(piece.Copies("Plinth front and back"), one => Assert.Equal(Made.Inches(34), one.Box.Dx));
        Assert.All(
            piece.Copies("Plinth end").Concat(piece.Copies("Plinth cross board")),
            one => Assert.Equal(Made.Inches(11.5m), one.Box.Dy)
        );
        Assert.Single(piece.Copies("Plinth cross board"));
        Assert.Equal(
            5,
            piece.Joints.Count(one =>
                one.Kind == JointKind.Screwed && Made.NameOf(piece, one.From) == "Bottom" && one.Along == Axis.Z
            )
        );
        Assert.Equal(Made.Inches(30), piece.Parts.SelectMany(part => part.Copies).Max(copy => copy.Box.EndZ));
        Assert.Equal(Length.Zero, piece.Copies("Plinth end").Min(copy => copy.Box.Z));
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // 6 in high, the rails of 2 1/2 in at their upper ends.
    [Fact]
    public void Legs_with_rails_between_them_carry_the_case()
    {
        var piece = Made.Piece(Case("legs"));
        var legs = piece.Copies("Base leg").Select(copy => copy.Box).ToList();
        Assert.Equal(4, legs.Count);
        Assert.All(legs, leg => Assert.Equal((Length.Zero, Made.Inches(6)), (leg.Z, leg.EndZ)));
        Assert.Equal((Made.Inches(1), Made.Inches(35)), (legs.Min(leg => leg.X), legs.Max(leg => leg.EndX)));
        Assert.All(
            piece.Copies("Base rail"),
            rail => Assert.Equal((Made.Inches(3.5m), Made.Inches(6)), (rail.Box.Z, rail.Box.EndZ))
        );
        Assert.Contains(piece.Steps, step => step.StartsWith("Check that the base doesn't rock", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"base_board\": \"stile\"", "\"base_board\": \"\"", "base_board")]
    [InlineData("\"base_leg\": \"stile\"", "\"base_leg\": \"\"", "base_leg")]
    [InlineData("\"base_height\": \"6 in\"", "\"base_height\": \"2 in\"", "base_height")]
    [InlineData("\"base_height\": \"6 in\"", "\"base_height\": \"6 in\", \"toe\": \"3 in\"", "toe")]
    [InlineData("\"base_height\": \"6 in\"", "\"base_height\": \"6 in\", \"base_setback\": \"16 in\"", "base_setback")]
    public void A_base_that_cannot_stand_is_refused(string old, string now, string field)
    {
        var fault = Made.Evaluate(Case("legs").Replace(old, now, StringComparison.Ordinal)).Faults[0];
        Assert.Equal("frame." + field, fault.Field);
    }

    // Ends of 5 1/2 in on a top 60 in long. A tongue of 1/4 in is 4 x 1/4 - 1/8 = 7/8 in long: strips of 60 - 11 + 1 3/4 in. Red
    // oak 32 in wide moves by 0.590 in (Wood Handbook, Table 13-5), half of it at each edge.
    [Fact]
    public void Breadboard_ends_take_the_tongues_of_the_strips()
    {
        var piece = Made.Piece(Table("\"overhang_ends\"", "\"breadboard\": \"top\", \"overhang_ends\""));
        Assert.All(piece.Copies("Top strip"), strip => Assert.Equal(Made.Inches(50.75m), strip.Box.Dx));
        var joints = piece.Joints.Where(joint => joint.Kind == JointKind.Breadboard).ToList();
        Assert.All(joints, joint => Assert.Equal(Made.Inches(0.875m), joint.Depth));
        Assert.Equal(
            joints.Count,
            piece.Hardware.Single(one => one.Name.StartsWith("Dowel pins", StringComparison.Ordinal)).Quantity
        );
        var moves = PieceJudge.Of(piece).Single(one => one.Working?.Name == "Each edge moves by");
        Assert.Equal(0.295, moves.Working!.Figure.Number(LengthUnit.Inch)!.Value, 3);
        Assert.Contains("⁵⁄₁₆″", moves.Text, StringComparison.Ordinal);
        Assert.Contains(piece.Steps, step => step.StartsWith("Glue only the middle", StringComparison.Ordinal));
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // Legs of 3 1/2 in and 2 1/2 in of rail: 6 in. A rail of 3 1/2 in takes one bolt at each end. The end aprons' tenons: 3 1/2 -
    // 1/4 - 1 1/2 in of leg are free, less 1/8 in: 1 5/8 in each, so 28 - 7 + 3 1/4 in.
    [Fact]
    public void Long_aprons_are_bolted_and_end_aprons_tenoned()
    {
        var piece = Made.Piece(Table("\"joint\": \"mortise\", \"tenon\": \"1 1/4 in\"", "\"joint\": \"bolt\""));
        Assert.Equal(4, piece.Joints.Count(joint => joint.Kind == JointKind.Bolted));
        Assert.Equal(4, piece.Joints.Count(joint => joint.Kind == JointKind.MortiseAndTenon));
        Assert.Equal(4, piece.Hardware.Single(one => one.Name == "Bolts, 3/8 in × 6 in, with barrel nuts and washers").Quantity);
        Assert.All(piece.Copies("End apron"), apron => Assert.Equal(Made.Inches(24.25m), apron.Box.Dy));
        Assert.All(piece.Copies("Long apron"), apron => Assert.Equal(Made.Inches(49), apron.Box.Dx));
    }

    [Fact]
    public void Thin_rails_are_not_bolted()
    {
        var json = Made.PostAndRail("").Replace("\"joint\": \"pocket\"", "\"joint\": \"bolt\"", StringComparison.Ordinal);
        var fault = Made.Evaluate(json).Faults[0];
        Assert.Equal("frame.joint", fault.Field);
        Assert.Contains("at least 1 ¼″", fault.Message, StringComparison.Ordinal);
    }

    // Between aprons 28 in apart outside, set back 1/4 in and 1 1/2 in thick: 24 1/2 in, in the middle of 56 in.
    [Fact]
    public void A_cross_rail_stands_in_the_middle_between_the_long_aprons()
    {
        var piece = Made.Piece(Table("\"cross\": \"count(width, 62 in)\"", "\"cross\": \"1\""));
        var rail = piece.Copies("Cross rail").Single().Box;
        Assert.Equal((Made.Inches(24.5m), Made.Inches(29.25m)), (rail.Dy, rail.X));
        Assert.Equal(2, piece.Joints.Count(joint => Made.NameOf(piece, joint.From) == "Cross rail"));
    }

    // Rails 2 1/2 in wide less the slat of 3/4 in: bearers 1 3/4 in high; 26 in between the legs less two of them leave 24 1/2
    // in, so one more stands between.
    [Fact]
    public void Lengthwise_slats_between_posts_lie_on_bearers()
    {
        var piece = Made.Piece(Made.PostAndRail("""{ "kind": "slats", "material": "stile", "count": 4, "lie": "lengthways" }"""));
        var bearers = piece.Copies("Slat bearer").Select(copy => copy.Box).OrderBy(box => box.X).ToList();
        Assert.Equal(3, bearers.Count);
        Assert.All(bearers, one => Assert.Equal((Made.Inches(1.75m), Made.Inches(14.5m)), (one.Dz, one.Dy)));
        Assert.Equal((Made.Inches(2), Made.Inches(28)), (bearers[0].X, bearers[^1].EndX));
        Assert.Equal(
            12,
            piece.Joints.Count(one => one.Kind == JointKind.Screwed && Made.NameOf(piece, one.Into) == "Slat bearer")
        );
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    private static string Case(string kind) =>
        Made.Carcass(
            "36",
            "14",
            "30",
            "",
            $$""", "base": "{{kind}}", "base_board": "stile", "base_leg": "stile", "base_height": "6 in" """
        );

    private static string Table(string old, string now) =>
        File.ReadAllText(DesignFiles.PathOf("table")).Replace(old, now, StringComparison.Ordinal);
}
