using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Glass doors, flaps and sliding doors, worked by hand.</summary>
public sealed class NewDoorTests
{
    // Opening 28 1/2 in square; two doors with gaps of 3/32 in: 14.109375 in wide, 28.3125 in high. The glass: less two stiles of
    // 2 1/2 in, plus two rabbets of 3/8 in, less 1/16 in at each side: 9.734375 by 23.9375 in, on a rule 9 11/16 by 23 15/16 in.
    [Fact]
    public void Glass_is_ordered_by_the_rabbet_less_its_clearance()
    {
        var piece = Made.Piece(Glass("half-lap"));
        var (width, height) = (Made.Inches(9.6875m), Made.Inches(23.9375m));
        var glass = piece.Hardware.Single(one => one.Name.StartsWith("Tempered glass", StringComparison.Ordinal));
        Assert.Equal(2, glass.Quantity);
        Assert.Contains(
            LengthFormat.WithUnit(width, LengthUnit.Inch) + " × " + LengthFormat.WithUnit(height, LengthUnit.Inch),
            glass.Name,
            StringComparison.Ordinal
        );
        Assert.Contains(piece.Steps, step => step.Contains("hold the stops with brads, without glue", StringComparison.Ordinal));
        Assert.Contains(
            piece.Warnings,
            one => one.Severity == Severity.Safety && one.Text.Contains("glazier", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // Uprights run to the ends of the rabbet, 23 5/16 + 2 x 3/8 in; the others lie between them, as long as the clear width.
    [Fact]
    public void Stops_fill_the_rabbet_behind_the_glass()
    {
        var piece = Made.Piece(Glass("half-lap"));
        var stops = piece.Copies("Glass stop").Select(copy => copy.Box).ToList();
        Assert.Equal(8, stops.Count);
        Assert.Equal(4, stops.Count(box => box.Dz == Made.Inches(24.0625m)));
        Assert.Equal(4, stops.Count(box => box.Dx == Made.Inches(9.109375m)));
        Assert.All(stops, box => Assert.Equal((Made.Inches(0.5m), Made.Inches(0.75m)), (box.Y, box.EndY)));
    }

    // Laps, bridles and miters reach across the whole stile; a tenon of 1/4 in is 4 x 1/4 - 1/8 = 7/8 in long.
    [Theory]
    [InlineData("half-lap", JointKind.HalfLap, 2.5)]
    [InlineData("bridle", JointKind.Bridle, 2.5)]
    [InlineData("miter", JointKind.Miter, 2.5)]
    [InlineData("mortise", JointKind.MortiseAndTenon, 0.875)]
    public void The_corner_decides_how_long_the_rails_are(string corner, JointKind kind, double deep)
    {
        var piece = Made.Piece(Glass(corner));
        var depth = Made.Inches((decimal)deep);
        Assert.Equal(8, piece.Joints.Count(joint => joint.Kind == kind && joint.Depth == depth));
        Assert.All(piece.Copies("Door rail"), rail => Assert.Equal(Made.Inches(9.109375m) + (depth * 2), rail.Box.Dx));
        Assert.Contains(piece.Parts, part => part is { Name: "Test piece for the corner joint", PracticeFor: not null });
    }

    [Theory]
    [InlineData("\"stop\": \"thin\"", "\"stop\": \"\"", "stop", "is missing")]
    [InlineData("\"stop\": \"thin\"", "\"stop\": \"box\"", "stop", "at most ½″")]
    [InlineData("\"stop\": \"thin\"", "\"stop\": \"thin\", \"rabbet\": \"1/16 in\"", "rabbet", "fall out")]
    [InlineData("\"stop\": \"thin\"", "\"stop\": \"thin\", \"rabbet\": \"1 1/2 in\"", "rabbet", "too little of the stile")]
    public void Glass_that_its_frame_cannot_hold_is_refused(string old, string now, string member, string message)
    {
        var fault = Made.Evaluate(Glass("half-lap").Replace(old, now, StringComparison.Ordinal)).Faults[0];
        Assert.Equal("bays.fills.0." + member, fault.Field);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    // 28 1/2 by 10 1/2 in, less 3/32 in all around.
    [Theory]
    [InlineData("below", "Bottom")]
    [InlineData("above", "Top")]
    public void A_flap_hangs_along_the_opening_and_has_stays(string hang, string carrier)
    {
        var piece = Made.Piece(Flap(hang, "inset"));
        var flap = piece.Parts.Single(part => part.Name == "Flap");
        Assert.Equal((Made.Inches(28.3125m), Made.Inches(10.3125m)), (flap.Length.Value, flap.Width.Value));
        var hinges = Assert.Single(piece.Joints, joint => joint.Kind == JointKind.Hinged);
        Assert.Equal((carrier, Axis.Z), (Made.NameOf(piece, hinges.Into), hinges.Along));
        Assert.Equal(2, piece.Hardware.Single(one => one.Name.StartsWith("Flap stay", StringComparison.Ordinal)).Quantity);
        Assert.Equal(2, piece.Hardware.Single(one => one.Name == "Flap hinge for an inset flap").Quantity);
        Assert.Contains(piece.Warnings, one => one is { Severity: Severity.Safety, Working: not null });
        Assert.DoesNotContain(piece.Warnings, one => one.Severity == Severity.Fails);
    }

    [Fact]
    public void An_overlay_flap_hangs_on_the_face_of_the_bottom()
    {
        var piece = Made.Piece(Flap("below", "overlay"));
        Assert.Equal("Bottom", Made.NameOf(piece, piece.Joints.Single(joint => joint.Kind == JointKind.Hinged).Into));
        Assert.Equal(Made.Inches(11.5m), piece.Parts.Single(part => part.Name == "Flap").Width.Value);
    }

    // Empty, a case 12 in high tips over a flap that reaches out by its height, not by its width of 28 in.
    [Fact]
    public void A_flap_reaches_out_by_its_height()
    {
        var piece = Made.Piece(Flap("below", "inset"));
        var working = PieceJudge.Of(piece).First(one => one.Working?.Name == "Stability factor").Working!;
        Assert.Equal(10.3125, working.Inputs.Single(one => one.Key == "reach").Working.Figure.Number(LengthUnit.Inch)!.Value, 6);
    }

    [Fact]
    public void A_pair_of_flaps_is_refused()
    {
        var json = Flap("below", "inset").Replace("\"hang\"", "\"leaves\": 2, \"hang\"", StringComparison.Ordinal);
        Assert.Equal("bays.fills.0.leaves", Made.Evaluate(json).Faults[0].Field);
    }

    // Inside 34 1/2 by 28 1/2 in: (34 1/2 + 1) / 2 = 17 3/4 in wide; 28 1/2 + 5/16 - 1/16 = 28 3/4 in high, 1/8 in in each
    // groove. Lifted 3/16 in to the bottom of the upper groove, a door is 1/16 in clear of the lower one.
    [Fact]
    public void Sliding_doors_stand_in_the_lower_groove_and_lift_into_the_upper_one()
    {
        var piece = Made.Piece(Sliding(""));
        var doors = piece.Copies("Sliding door").Select(copy => copy.Box).OrderBy(box => box.X).ToList();
        Assert.Equal(2, doors.Count);
        Assert.All(doors, door => Assert.Equal((Made.Inches(17.75m), Made.Inches(28.75m)), (door.Dx, door.Dz)));
        Assert.Equal(Made.Inches(1), doors[0].EndX - doors[1].X);
        Assert.Equal((Made.Inches(0.28125m), Made.Inches(0.84375m)), (doors[0].Y, doors[1].Y));
        var tracks = piece.Joints.Where(joint => joint.Kind == JointKind.SlidingGroove).ToList();
        Assert.Equal(
            [
                ("Bottom", Made.Inches(0.125m), Length.Zero),
                ("Bottom", Made.Inches(0.125m), Length.Zero),
                ("Top", Made.Inches(0.125m), Made.Inches(0.1875m)),
                ("Top", Made.Inches(0.125m), Made.Inches(0.1875m)),
            ],
            tracks.Select(one => (Made.NameOf(piece, one.Into), one.Depth, one.Clearance)).Order()
        );
        Assert.Equal(2, piece.Hardware.Single(one => one.Name == "Recessed pull").Quantity);
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // Four upright edges of 28 3/4 in: (4 × 28 3/4 + 4 × 1 in) × 1.1 = 130.9 in, 11 ft.
    [Fact]
    public void Upright_edges_of_sliding_doors_are_banded()
    {
        var piece = Made.Piece(Sliding(", \"edge\": \"band\""));
        Assert.All(
            piece.Copies("Sliding door"),
            door =>
                Assert.Equal(
                    [(BoxSide.Left, EdgeWork.Band), (BoxSide.Right, EdgeWork.Band)],
                    door.Edges.Select(edge => (edge.Side, edge.Work))
                )
        );
        Assert.Equal(11, Assert.Single(piece.Hardware, one => one.Name == "Edge band 13/16 in wide, by the foot").Quantity);
    }

    [Theory]
    [InlineData("\"upper\": \"1/4 in\"", "upper", "at least ⁵⁄₁₆″")]
    [InlineData("\"upper\": \"1/2 in\"", "upper", "more than half of the top")]
    [InlineData("\"setback\": \"13 3/4 in\"", "setback", "of depth")]
    [InlineData("\"overlap\": \"36 in\"", "overlap", "could not open")]
    public void Sliding_doors_that_would_fall_out_or_jam_are_refused(string member, string field, string message)
    {
        var fault = Made.Evaluate(Sliding(", " + member)).Faults[0];
        Assert.Equal("bays.fills.0." + field, fault.Field);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_posts_sliding_doors_have_no_bottom_to_run_in()
    {
        var fault = Made.Evaluate(Made.PostAndRail("""{ "kind": "sliding-doors", "material": "thin" }""")).Faults[0];
        Assert.Contains("nothing below", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Behind_sliding_doors_the_bay_is_split_all_the_same()
    {
        var json = Sliding("")
            .Replace(
                "\"fills\":",
                """
                "split": { "kind": "divider", "material": "case" }, "bays": [ {}, {} ], "fills":
                """,
                StringComparison.Ordinal
            );
        var piece = Made.Piece(json);
        Assert.True(piece.Copies("Divider").Single().Box.Y > piece.Copies("Sliding door").Max(door => door.Box.EndY));
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    private static string Glass(string corner) =>
        Made.Carcass(
            "30",
            "14",
            "30",
            $$"""
            { "kind": "doors", "make": "glass", "material": "stile", "stop": "thin", "leaves": 2, "fit": "inset", "corner": "{{corner}}" }
            """
        );

    private static string Flap(string hang, string fit) =>
        Made.Carcass(
            "30",
            "14",
            "12",
            $$"""{ "kind": "doors", "make": "slab", "material": "case", "hang": "{{hang}}", "fit": "{{fit}}" }"""
        );

    private static string Sliding(string more) =>
        Made.Carcass("36", "14", "30", $$"""{ "kind": "sliding-doors", "material": "thin"{{more}} }""");
}
