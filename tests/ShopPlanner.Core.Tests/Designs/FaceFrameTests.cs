using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Doors and drawers behind a face frame: the stile stands in over the side of the case.</summary>
public sealed class FaceFrameTests
{
    private const string Frame = """, "face": "stile" """;
    private const string Drawers =
        """{ "kind": "drawers", "count": 3, "front": "case", "box": "box", "bottom": "thin", "fit": "inset" }""";

    // The stile is 2 1/2 in wide on a side of 3/4 in: 1 3/4 in of filler, so that the slide's 1/2 in is all that is left.
    [Fact]
    public void A_drawer_s_slides_are_carried_by_fillers_flush_with_the_stiles()
    {
        var piece = Made.Piece(Made.Carcass("30", "20", "30", Drawers, Frame));
        var filler = piece.Parts.Single(part => part.Name == "Slide filler");
        Assert.Equal((6, Made.Inches(1.75m), Made.Inches(0.75m)), (filler.Quantity, filler.Width.Value, filler.Thickness.Value));
        var boxes = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, copy => copy.Box);
        var slides = piece.Joints.Where(joint => joint.Kind == JointKind.Sliding).ToList();
        Assert.Equal(6, slides.Count);
        Assert.All(slides, slide => Assert.Equal("Slide filler", Made.NameOf(piece, slide.Into)));
        Assert.All(slides, slide => Assert.Equal(Made.Inches(0.5m), Gap(boxes[slide.From], boxes[slide.Into])));
        Assert.DoesNotContain(piece.Warnings, one => one.Severity == Core.Workings.Severity.Fails);
    }

    [Fact]
    public void Without_a_face_frame_the_side_carries_the_slides()
    {
        var piece = Made.Piece(Made.Carcass("30", "20", "30", Drawers));
        Assert.DoesNotContain(piece.Parts, part => part.Name == "Slide filler");
        Assert.All(
            piece.Joints.Where(joint => joint.Kind == JointKind.Sliding),
            joint => Assert.Equal("Side", Made.NameOf(piece, joint.Into))
        );
    }

    [Fact]
    public void Between_legs_a_rail_carries_the_slides()
    {
        var piece = Made.Piece(Made.PostAndRail(Drawers));
        Assert.Equal(6, piece.Parts.Where(part => part.Name == "Slide rail").Sum(part => part.Quantity));
        Assert.All(
            piece.Joints.Where(joint => joint.Kind == JointKind.Sliding),
            joint => Assert.Equal("Slide rail", Made.NameOf(piece, joint.Into))
        );
    }

    [Theory]
    [InlineData("inset", "Face-frame hinge for an inset door")]
    [InlineData("overlay", "Face-frame hinge for an overlay door")]
    public void A_door_hangs_on_the_stile_with_hinges_for_it(string fit, string hinge)
    {
        var doors =
            $$"""{ "kind": "doors", "make": "slab", "material": "case", "leaves": 2, "fit": "{{fit}}", "overlay": "1/2 in" }""";
        var piece = Made.Piece(Made.Carcass("30", "14", "40", doors, Frame));
        Assert.Equal(
            ["Face stile", "Face stile"],
            piece.Joints.Where(one => one.Kind == JointKind.Hinged).Select(one => Made.NameOf(piece, one.Into))
        );
        Assert.Equal(4, piece.Hardware.Single(one => one.Name == hinge).Quantity);
    }

    // A post 2 in square has no room for the plate of a cup hinge behind a door of 3/4 in.
    [Fact]
    public void On_a_post_a_door_hangs_with_butt_hinges()
    {
        var doors = """{ "kind": "doors", "make": "slab", "material": "case", "leaves": 2, "fit": "inset" }""";
        var piece = Made.Piece(Made.PostAndRail(doors));
        Assert.Equal(4, piece.Hardware.Single(one => one.Name == "Butt hinge for an inset door").Quantity);
    }

    [Theory]
    [InlineData("""{ "kind": "doors", "make": "slab", "material": "case" }""")]
    [InlineData("""{ "kind": "drawers", "count": 2, "front": "case", "box": "box", "bottom": "thin" }""")]
    public void Without_a_stile_before_the_divider_nothing_closes_beside_it(string fill)
    {
        var json = Made.Carcass("40", "20", "30", "", Frame)
            .Replace(
                "\"fills\": [  ]",
                $$"""
                "split": { "kind": "divider", "material": "case", "front": "no" }, "bays": [ { "fills": [ {{fill}} ] }, {} ]
                """,
                StringComparison.Ordinal
            );
        var fault = Made.Evaluate(json).Faults[0];
        Assert.Equal("bays.bays.0.fills.0.fit", fault.Field);
        Assert.Contains("has no stile beside it", fault.Message, StringComparison.Ordinal);
    }

    private static Length Gap(Box one, Box other) => Length.Max(other.X - one.EndX, one.X - other.EndX);
}
