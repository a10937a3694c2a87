using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Mid stiles and mid rails in the plane of the front, before dividers and fixed shelves; doors and drawers beside
/// them.</summary>
public sealed class FrontMemberTests
{
    private const string Face = """, "face": "stile" """;
    private const string Door = """{ "kind": "doors", "make": "slab", "material": "case", "fit": "inset" }""";
    private const string Drawers =
        """{ "kind": "drawers", "count": 2, "front": "case", "box": "box", "bottom": "thin", "fit": "inset" }""";

    // Inside 3/4 to 39 1/4 in, the divider of 3/4 in at 19 5/8 in; a stile of 2 1/2 in before its middle begins at 18 3/4 in.
    [Fact]
    public void Before_a_divider_beside_a_door_stands_a_mid_stile_between_the_face_rails()
    {
        var piece = Made.Piece(Split(Made.Carcass("40", "20", "30", "", Face), "divider", "", "{}", Filled(Door)));
        var stile = piece.Copies("Mid stile").Single().Box;
        Assert.Equal(
            (Made.Inches(18.75m), Made.Inches(2.5m), Length.Zero, Made.Inches(25)),
            (stile.X, stile.Dx, stile.Y, stile.Dz)
        );
        Assert.Equal(["Divider", "Face rail", "Face rail"], Joined(piece, "Mid stile"));
        // From the stile at 21 1/4 to the face stile at 37 1/2 in, less two gaps of 3/32 in.
        var door = piece.Copies("Door").Single().Box;
        Assert.Equal(Made.Inches(16.0625m), door.Dx);
        Assert.Equal("Mid stile", Carrier(piece));
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // Legs 2 in: the bay from 2 to 28 in, the divider at 14 5/8 in, the stile as wide as the rail, 2 1/2 in, at 13 3/4 in.
    [Fact]
    public void Between_posts_a_door_beside_a_divider_hangs_on_a_mid_stile_between_the_front_rails()
    {
        var piece = Made.Piece(Split(Made.PostAndRail(""), "divider", "", "{}", Filled(Door)));
        var stile = piece.Copies("Mid stile").Single().Box;
        Assert.Equal((Made.Inches(13.75m), Made.Inches(2.5m), Made.Inches(25)), (stile.X, stile.Dx, stile.Dz));
        Assert.Equal(["Divider", "Front rail", "Front rail"], Joined(piece, "Mid stile"));
        Assert.Equal("Mid stile", Carrier(piece));
        Assert.Contains(piece.Hardware, one => one.Name == "Butt hinge for an inset door");
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // The stile stands out (2 1/2 - 3/4) / 2 = 7/8 in over each face of the divider.
    [Fact]
    public void Drawers_on_both_sides_of_a_mid_stile_run_on_fillers_flush_with_it()
    {
        var piece = Made.Piece(Split(Made.Carcass("48", "20", "30", "", Face), "divider", "", Filled(Drawers), Filled(Drawers)));
        var widths = piece.Parts.Where(part => part.Name == "Slide filler").Select(part => part.Width.Value).Order().Distinct();
        Assert.Equal([Made.Inches(0.875m), Made.Inches(1.75m)], widths);
        Assert.DoesNotContain(PieceJudge.Of(piece), one => one.Severity == Severity.Fails);
    }

    // The shelf lies at 14 5/8 in and is 3/4 in thick: the rail's upper edge at 15 3/8 in, its lower one at 12 7/8 in.
    [Fact]
    public void Before_a_fixed_shelf_lies_a_mid_rail_flush_with_its_upper_face()
    {
        var piece = Made.Piece(Split(Made.Carcass("30", "20", "30", "", Face), "fixed-shelf", "", Filled(Door), "{}"));
        var rail = piece.Copies("Mid rail").Single().Box;
        Assert.Equal((Made.Inches(12.875m), Made.Inches(15.375m)), (rail.Z, rail.EndZ));
        Assert.Equal(["Face stile", "Face stile", "Fixed shelf"], Joined(piece, "Mid rail"));
        Assert.Equal(Made.Inches(10.1875m), piece.Copies("Door").Single().Box.Dz);
    }

    [Fact]
    public void Where_nothing_closes_a_bay_a_divider_stands_alone() =>
        Assert.DoesNotContain(
            Made.Piece(Split(Made.Carcass("40", "20", "30", "", Face), "divider", "", "{}", "{}")).Parts,
            part => part.Name == "Mid stile"
        );

    [Fact]
    public void A_stile_narrower_than_its_divider_is_refused()
    {
        var json = Split(
            Made.Carcass("40", "20", "30", "", Face),
            "divider",
            """, "front_width": "1/2 in" """,
            "{}",
            Filled(Door)
        );
        var fault = Assert.Single(Made.Evaluate(json).Faults);
        Assert.Equal("bays.split.front_width", fault.Field);
        Assert.Contains("at least ¾″", fault.Message, StringComparison.Ordinal);
    }

    // Two overlay doors over one divider of 3/4 in leave 1/16 in between them: 11/32 in each, 5/16 in on a rule.
    [Theory]
    [InlineData("""{ "kind": "doors", "make": "slab", "material": "case", "fit": "overlay", "overlay": "3/8 in" }""")]
    [InlineData(
        """{ "kind": "drawers", "count": 2, "front": "case", "box": "box", "bottom": "thin", "fit": "overlay", "overlay": "3/8 in" }"""
    )]
    public void Overlay_fronts_never_meet_over_a_divider(string fill)
    {
        var fault = Made.Evaluate(Split(Made.Carcass("40", "20", "30", ""), "divider", "", Filled(fill), "{}")).Faults[0];
        Assert.Equal("bays.bays.0.fills.0.overlay", fault.Field);
        Assert.Contains("at most ⁵⁄₁₆″", fault.Message, StringComparison.Ordinal);
    }

    private static string Filled(string fill) => $$"""{ "fills": [ {{fill}} ] }""";

    private static string Split(string json, string kind, string more, string one, string other) =>
        json.Replace(
            "\"fills\": [  ]",
            $$"""
            "split": { "kind": "{{kind}}", "material": "case"{{more}} }, "bays": [ {{one}}, {{other}} ]
            """,
            StringComparison.Ordinal
        );

    private static string Carrier(Piece piece) =>
        Made.NameOf(piece, piece.Joints.Single(joint => joint.Kind == JointKind.Hinged).Into);

    private static IEnumerable<string> Joined(Piece piece, string from) =>
        piece
            .Joints.Where(joint => Made.NameOf(piece, joint.From) == from)
            .Select(joint => Made.NameOf(piece, joint.Into))
            .Order(StringComparer.Ordinal);
}
