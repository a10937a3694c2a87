using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Boxes: ends in rabbets, a bottom in grooves, a lid that is held.</summary>
public sealed class BoxTests
{
    // 20 x 14 in of 3/4 in: ends 14 - 2 x 3/8 = 13 1/4 in; bottom 20 - 2 x (3/4 - 1/4) = 19 by 13 in.
    [Fact]
    public void The_parts_of_an_open_box_come_to_its_outside()
    {
        var piece = Made.Piece(Box("20", "14", "4", """ "front_lower": "1 in", "back_lower": "1 in" """));
        Assert.Equal(Made.Inches(13.25m), Part("End").Length.Value);
        Assert.Equal((Made.Inches(20), Made.Inches(3)), (Part("Front").Length.Value, Part("Front").Width.Value));
        Assert.Equal((Made.Inches(19), Made.Inches(13)), (Part("Bottom").Length.Value, Part("Bottom").Width.Value));
        Assert.Equal(4, piece.Joints.Count(joint => joint is { Kind: JointKind.Rabbet } && joint.Depth == Made.Inches(0.375m)));
        Assert.Equal(4, piece.Joints.Count(joint => joint is { Kind: JointKind.Groove } && joint.Depth == Made.Inches(0.25m)));
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);

        PiecePart Part(string name) => piece.Parts.Single(part => part.Name == name);
    }

    [Fact]
    public void Hand_slots_are_made_before_the_ends_are_joined()
    {
        var piece = Made.Piece(Box("20", "14", "4", """ "handles": "slots" """));
        Assert.Contains("Make a hand slot in both ends before they are joined", piece.Steps[0], StringComparison.Ordinal);
    }

    // A lid of 36 x 18 in, 3/4 in plywood of 0.5 (Wood Handbook, T12-1: 0.4 to 0.6): 486 in³ = 0.28125 ft³ x 31.2 lb/ft³ = 8.78
    // lb; at half of 18 in 79 in-lb: supports for 80.
    [Fact]
    public void Supports_are_chosen_by_the_lid_s_weight_and_depth()
    {
        var piece = Made.Piece(Box("36", "18", "20", """ "lid": "side", "front_lower": "3/4 in" """));
        Assert.Contains(piece.Hardware, item => item.Name == "Lid supports that hold at any angle, for 80 in-lb in all (pair)");
        var falls = piece.Warnings.Single(one => one.Text.StartsWith("A falling lid", StringComparison.Ordinal));
        Assert.Equal(Severity.Safety, falls.Severity);
        Assert.InRange(falls.Working!.Figure.Number(LengthUnit.Inch)!.Value, 78, 80);
        Assert.DoesNotContain(piece.Warnings, one => one.Text.Contains("no room for fingers", StringComparison.Ordinal));
        Assert.Single(piece.Joints, joint => joint.Kind == JointKind.Hinged);
    }

    [Fact]
    public void A_lid_that_closes_on_the_front_is_told()
    {
        var piece = Made.Piece(Box("36", "18", "20", """ "lid": "side" """));
        Assert.Contains(
            piece.Warnings,
            one => one.Severity == Severity.Watch && one.Text.Contains("no room for fingers", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData(""" "groove": "1/2 in" """, "frame.groove", "at most half of the side, ⅜″")]
    [InlineData(""" "front_lower": "4 in" """, "frame.front_lower", "leaves nothing of the side above the bottom")]
    [InlineData(""" "lid": "side", "back_lower": "1 in" """, "frame.back_lower", "leaves the lid nothing to hang on")]
    public void What_cannot_be_is_told_at_its_option(string frame, string field, string said)
    {
        var fault = Assert.Single(Made.Evaluate(Box("20", "14", "4", frame)).Faults);
        Assert.Equal(field, fault.Field);
        Assert.Contains(said, fault.Message, StringComparison.Ordinal);
    }

    private static string Box(string width, string depth, string height, string frame) =>
        $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Box",
              "dimensions": [
                { "name": "width", "value": "{{width}}" }, { "name": "depth", "value": "{{depth}}" }, { "name": "height", "value": "{{height}}" }
              ],
              "materials": [
                { "role": "side", "name": "Plywood", "form": "sheet", "thickness": "3/4", "species": "plywood" },
                { "role": "thin", "name": "Thin plywood", "form": "sheet", "thickness": "1/4" }
              ],
              "frame": { "kind": "box", "side": "side", "bottom": "thin", {{frame}} }
            }
            """;
}
