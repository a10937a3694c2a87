using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>Sections through joints.</summary>
public sealed class JointDetailTests
{
    public static TheoryData<string> Designs => [.. BuiltInPieces.Names];

    [Theory, MemberData(nameof(Designs))]
    public void Every_kind_of_joint_is_drawn_once_and_within_its_page(string design)
    {
        var piece = BuiltInPieces.Read(design);
        var details = JointDetails.Of(piece);
        Assert.Equal(piece.Joints.Length, details.Sum(one => one.Count));
        Assert.Equal(details.Length, details.Select(one => (one.Title, one.Drawing.Description)).Distinct().Count());
        Assert.All(
            details,
            detail =>
                Assert.All(
                    detail.Drawing.Leaves().Select(PieceDrawingTests.Extent),
                    box => PieceDrawingTests.Within(box, detail.Drawing)
                )
        );
        Assert.All(
            details,
            detail =>
                Assert.Equal(2, detail.Drawing.Primitives().OfType<Marked>().Count(one => one.Shapes.OfType<Caption>().Any()))
        );
    }

    [Theory, MemberData(nameof(Designs))]
    public void Every_screw_of_a_built_in_piece_can_be_bought(string design) =>
        Assert.DoesNotContain(
            JointDetails.Of(BuiltInPieces.Read(design)),
            one => one.Note.StartsWith("No common", StringComparison.Ordinal)
        );

    [Fact]
    public void A_screw_is_named_by_inches_in_a_metric_piece_too() =>
        Assert.Contains(
            JointDetails.Of(BuiltInPieces.Read("plant-stand")),
            one => one.Note.StartsWith("1 ¼″ (32 mm) pocket screw", StringComparison.Ordinal)
        );

    /// <summary>Depths as the designs' files say them.</summary>
    [Theory]
    [
        InlineData("bookcase", JointKind.Dado, "¼"),
        InlineData("table", JointKind.MortiseAndTenon, "1 ¼"),
        InlineData("pantry-cupboard", JointKind.Groove, "¼")
    ]
    public void Depth_is_dimensioned(string design, JointKind kind, string figure) =>
        Assert.Contains(
            JointDetails.Of(BuiltInPieces.Read(design)),
            one => one.Kind == kind && one.Drawing.Shapes.OfType<Dimension>().Any(dimension => dimension.Words == figure)
        );

    [Fact]
    public void Depth_is_drawn_to_the_scale_of_the_thickness()
    {
        var dado = JointDetails
            .Of(BuiltInPieces.Read("bookcase"))
            .First(one => one.Kind == JointKind.Dado)
            .Drawing.Shapes.OfType<Dimension>()
            .ToList();
        var (depth, thick) = (dado.Single(one => one.Words == "¼"), dado.Single(one => one.Words != "¼"));
        Assert.Equal(0.25 / (23 / 32.0), (depth.To - depth.From) / (thick.To - thick.From), 3);
    }

    /// <summary>A face frame shows its front: pockets are bored from behind.</summary>
    [Fact]
    public void Pockets_of_a_face_frame_are_bored_from_the_back() =>
        Assert.Contains(
            JointDetails.Of(BuiltInPieces.Read("bookcase")),
            one =>
                one.Kind == JointKind.PocketScrew
                && one.Note.EndsWith("from the back of the face rail.", StringComparison.Ordinal)
        );

    /// <summary>A cup of 35 mm with 5 mm of wood beside it has its centre at 22.5 mm: a hardware maker's sheet.</summary>
    [Fact]
    public void Cup_of_a_hinge_has_its_centre_dimensioned()
    {
        var hinge = JointDetails.Of(BuiltInPieces.Read("pantry-cupboard")).Single(one => one.Kind == JointKind.Hinged);
        Assert.Equal("⅞", hinge.Drawing.Shapes.OfType<Dimension>().Single().Words);
        Assert.Contains("22.5 mm", hinge.Note, StringComparison.Ordinal);
    }

    /// <summary>In a leg of 19 mm a dowel's usual hole of 23.8 mm would come out at the far face.</summary>
    [Fact]
    public void A_dowel_never_breaks_through_a_thin_part()
    {
        var details = JointDetails
            .Of(BuiltInPieces.Read("plant-stand", joint: "dowel"))
            .Where(one => one.Kind == JointKind.Dowel)
            .ToList();
        Assert.Contains(details, one => one.Note.Contains("too thin for longer ones", StringComparison.Ordinal));
        Assert.All(
            details,
            one =>
                PieceDrawingTests.Within(
                    PieceDrawingTests.Extent(one.Drawing.Leaves().OfType<Patch>().Last(patch => patch.Tint == "#E3CDAE")),
                    one.Drawing
                )
        );
    }
}
