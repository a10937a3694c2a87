using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>A frame for a desk or a nightstand: drawers between two flat front rails, carried by what stands flush with the
/// legs.</summary>
public sealed class DrawerTableTests
{
    private const string Drawer = """{ "kind": "drawers", "count": 1, "front": "apron", "box": "box", "bottom": "thin" }""";

    // Aprons of 7 1/4 in less two rails of 3/4 in: 5 3/4 in of opening, 37 in wide between legs of 1 1/2 in.
    [Fact]
    public void The_opening_lies_between_the_front_rails()
    {
        var piece = Made.Piece(Table($$"""{ "fills": [ {{Drawer}} ] }"""));
        var opening = piece.Openings.Single().Box;
        Assert.Equal((Made.Inches(37), Made.Inches(5.75m), Made.Inches(23.5m)), (opening.Dx, opening.Dz, opening.Z));
        Assert.All(piece.Copies("Front rail"), rail => Assert.Equal((Axis.Z, Made.Inches(2.5m)), (rail.Flat, rail.Box.Dy)));
    }

    [Fact]
    public void Aprons_flush_with_the_legs_carry_the_slides()
    {
        var piece = Made.Piece(Table($$"""{ "fills": [ {{Drawer}} ] }"""));
        var slides = piece.Joints.Where(joint => joint.Kind == JointKind.Sliding).ToList();
        Assert.Equal(["End apron", "End apron"], slides.Select(slide => Made.NameOf(piece, slide.Into)));
        Assert.DoesNotContain(piece.Parts, part => part.Name is "Slide rail" or "Slide filler");
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // A front rail 2 1/2 in deep does not hold the far end of a divider: the back apron does.
    [Fact]
    public void A_divider_is_held_by_both_front_rails_and_the_back_apron()
    {
        var bays = $$"""
            { "split": { "kind": "divider", "material": "case" }, "bays": [ { "fills": [ {{Drawer}} ] }, { "fills": [ {{Drawer}} ] } ] }
            """;
        var piece = Made.Piece(Table(bays));
        Assert.Equal(
            ["Back apron", "Front rail", "Front rail"],
            piece
                .Joints.Where(one => Made.NameOf(piece, one.From) == "Divider")
                .Select(one => Made.NameOf(piece, one.Into))
                .Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            ["Divider", "Divider", "End apron", "End apron"],
            piece
                .Joints.Where(one => one.Kind == JointKind.Sliding)
                .Select(one => Made.NameOf(piece, one.Into))
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void An_apron_no_wider_than_two_rails_leaves_no_opening()
    {
        var json = Table("""{ "fills": [] }""").Replace("\"width\": \"7 1/4\"", "\"width\": \"1 1/2\"", StringComparison.Ordinal);
        var fault = Assert.Single(Made.Evaluate(json).Faults);
        Assert.Equal("frame.rail", fault.Field);
        Assert.Contains("leaves no opening between the front rails", fault.Message, StringComparison.Ordinal);
    }

    private static string Table(string bays) =>
        $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Table",
              "dimensions": [ { "name": "width", "value": "40" }, { "name": "depth", "value": "22" }, { "name": "height", "value": "30" } ],
              "materials": [
                { "role": "leg", "name": "2x2", "form": "board", "thickness": "1 1/2", "width": "1 1/2" },
                { "role": "apron", "name": "1x8", "form": "board", "thickness": "3/4", "width": "7 1/4" },
                { "role": "rail", "name": "1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" },
                { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
                { "role": "box", "name": "Half plywood", "form": "sheet", "thickness": "1/2" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "1/4" }
              ],
              "frame": { "kind": "drawer-table", "leg": "leg", "apron": "apron", "rail": "rail" },
              "bays": {{bays}}
            }
            """;
}
