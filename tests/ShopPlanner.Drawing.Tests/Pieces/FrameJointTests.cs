using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>Sections through the joints of door frames, breadboard ends and sliding doors.</summary>
public sealed class FrameJointTests
{
    private const string Top =
        """, "top": { "kind": "solid-top", "material": "board", "breadboard": "board", "overhang_ends": "1 in" }""";

    [Theory]
    [InlineData("half-lap", JointKind.HalfLap, "half-lap")]
    [InlineData("bridle", JointKind.Bridle, "bridle joint")]
    [InlineData("miter", JointKind.Miter, "miter with a spline")]
    [InlineData("half-lap", JointKind.Pinned, "brads in a rabbet")]
    [InlineData("half-lap", JointKind.Breadboard, "breadboard end")]
    public void Joints_of_a_glass_door_and_a_top_are_drawn_within_their_page(string corner, JointKind kind, string name)
    {
        var details = JointDetails
            .Of(Case($$"""{ "kind": "doors", "make": "glass", "material": "board", "stop": "thin", "corner": "{{corner}}" }"""))
            .Where(one => one.Kind == kind)
            .ToList();
        Assert.NotEmpty(details);
        Assert.All(details, one => Assert.EndsWith(": " + name, one.Title, StringComparison.Ordinal));
        Assert.All(details, IsDrawn);
    }

    // The rail is half as thick as the stile where they lap: 3/4 in and 3/8 in.
    [Fact]
    public void A_half_lap_is_dimensioned_with_half_of_the_thickness()
    {
        var lap = JointDetails
            .Of(Case("""{ "kind": "doors", "make": "glass", "material": "board", "stop": "thin" }"""))
            .First(one => one.Kind == JointKind.HalfLap);
        Assert.Contains(lap.Drawing.Shapes.OfType<Dimension>(), one => one.Words == "⅜");
        Assert.Contains("come out flush", lap.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sliding_door_shows_the_groove_that_it_lifts_into()
    {
        var grooves = JointDetails
            .Of(Case("""{ "kind": "sliding-doors", "material": "thin" }"""))
            .Where(one => one.Kind == JointKind.SlidingGroove)
            .ToList();
        Assert.Equal(2, grooves.Count);
        Assert.All(grooves, IsDrawn);
        // 1/8 in of door and 3/16 in to lift it; where the dimension is too small for its words, they stand beside it.
        var words = LengthFormat.Set(Length.FromInches(0.3125m), LengthUnit.Inch).Text;
        Assert.Contains(
            grooves,
            one =>
                one.Drawing.Shapes.OfType<Dimension>().Any(dimension => dimension.Words == words)
                || one.Drawing.Shapes.OfType<Caption>().Any(caption => caption.Words == words)
        );
    }

    [Fact]
    public void The_hinge_of_a_flap_is_told_as_one()
    {
        var details = JointDetails.Of(
            Case("""{ "kind": "doors", "make": "slab", "material": "case", "hang": "below", "fit": "inset" }""")
        );
        Assert.Contains("edge of the flap", details.Single(one => one.Kind == JointKind.Hinged).Note, StringComparison.Ordinal);
    }

    private static void IsDrawn(JointDetail detail)
    {
        Assert.All(
            detail.Drawing.Leaves().Select(PieceDrawingTests.Extent),
            box => PieceDrawingTests.Within(box, detail.Drawing)
        );
        Assert.Equal(2, detail.Drawing.Primitives().OfType<Marked>().Count(one => one.Shapes.OfType<Caption>().Any()));
    }

    private static Piece Case(string fill) =>
        BuiltInPieces.Of(
            $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Case",
              "dimensions": [
                { "name": "width", "value": "30" }, { "name": "depth", "value": "14" }, { "name": "height", "value": "20" }
              ],
              "materials": [
                { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "1/4" },
                { "role": "board", "name": "Poplar 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" }
              ],
              "frame": { "kind": "sheet-carcass", "case": "case" },
              "bays": { "fills": [ {{fill}} ] }{{Top}}
            }
            """
        );
}
