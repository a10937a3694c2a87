using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Judging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Edges that are banded, lipped, stiffened by a strip or rounded over: what that does to sizes, sag and what is
/// bought.</summary>
public sealed class EdgeTests
{
    private const string Strip =
        """{ "role": "strip", "name": "Pine 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2", "species": "pine-eastern-white" },""";

    [Theory]
    [InlineData("plain", 0, 1)]
    [InlineData("band", 0, 1)]
    [InlineData("round", 0, 1)]
    [InlineData("lipping", 0.75, 0.75)]
    [InlineData("strip", 0.75, 2.5)]
    public void A_shelf_is_narrower_by_its_edging_and_fills_the_same_space(string edge, double narrower, double high)
    {
        var (plain, edged) = (Shelf("plain"), Shelf(edge));
        Assert.Equal(
            plain.Copies("Shelf").Single().Box.Dy - Made.Inches((decimal)narrower),
            edged.Parts.Single(part => part.Name == "Shelf").Width.Value
        );
        var strips = edged.Parts.Where(part => part.Name is "Lipping" or "Edge strip").SelectMany(part => part.Copies).ToList();
        Assert.Equal(narrower > 0 ? 1 : 0, strips.Count);
        if (strips.Count == 0)
            return;
        var (strip, shelf) = (strips[0].Box, edged.Copies("Shelf").Single().Box);
        Assert.Equal(Made.Inches((decimal)high), strip.Dz);
        Assert.Equal((shelf.X, shelf.EndX, shelf.Y, shelf.EndZ), (strip.X, strip.EndX, strip.EndY, strip.EndZ));
        Assert.Equal(plain.Copies("Shelf").Single().Box.Y, strip.Y);
        Assert.Contains(
            edged.Joints,
            joint => joint.Kind == JointKind.Glued && joint.From == strips[0].Mark && joint.Along == Axis.Y
        );
    }

    [Fact]
    public void A_lipping_runs_between_the_sides_and_the_shelf_into_their_dadoes()
    {
        var json = Made.Carcass("30", "12", "30", "")
            .Replace(
                "\"fills\": [  ]",
                """
                "split": { "kind": "fixed-shelf", "material": "case", "let_in": "1/4 in", "edge": "lipping", "edge_material": "stile" },
                "bays": [ {}, {} ]
                """,
                StringComparison.Ordinal
            );
        var piece = Made.Piece(json);
        var (shelf, lip) = (piece.Copies("Fixed shelf").Single().Box, piece.Copies("Lipping").Single().Box);
        Assert.Equal((Made.Inches(29), Made.Inches(28.5m)), (shelf.Dx, lip.Dx));
        Assert.Equal("both faces", piece.Parts.Single(part => part.Name == "Fixed shelf").FacesToFinish);
        Assert.DoesNotContain(piece.Warnings, one => one.Severity == Severity.Fails);
    }

    // Plywood 3/4 in thick, 34 in long and 11 1/4 in deep, under 25 lb per square foot: beyond what is seen, and not with a strip.
    [Fact]
    public void A_strip_keeps_a_shelf_straight_that_would_sag_and_a_lipping_does_not()
    {
        static bool Sags(Piece piece) =>
            PieceJudge.Of(piece).Any(one => one.Text.StartsWith("Shelf will sag", StringComparison.Ordinal));
        Assert.True(Sags(Shelf("plain")));
        Assert.True(Sags(Shelf("lipping")));
        Assert.False(Sags(Shelf("strip")));
    }

    [Fact]
    public void A_strip_of_unknown_wood_counts_for_nothing()
    {
        var json = Case("strip").Replace("\"pine-eastern-white\"", "\"unheard-of\"", StringComparison.Ordinal);
        Assert.Contains(PieceJudge.Of(Made.Piece(json)), one => one.Text.StartsWith("Shelf will sag", StringComparison.Ordinal));
    }

    // Four shelves' fronts of 34 in less 1/8 in of room: (4 × 33 7/8 in + 4 × 1 in) × 1.1 = 153.45 in, 13 ft.
    [Fact]
    public void Band_is_bought_by_the_foot_with_what_is_spoiled()
    {
        var piece = Made.Piece(Case("band").Replace("\"count\": 1", "\"count\": 4", StringComparison.Ordinal));
        Assert.Equal(13, Assert.Single(piece.Hardware, one => one.Name == "Edge band 13/16 in wide, by the foot").Quantity);
    }

    [Fact]
    public void Lippings_of_a_free_part_lie_within_its_size_and_the_first_covers_the_corner()
    {
        var piece = Made.Piece(
            Free(
                """
                { "kind": "lipping", "side": "front", "material": "strip" }, { "kind": "lipping", "side": "left", "material": "strip" },
                { "kind": "round", "side": "back" }
                """
            )
        );
        var board = Assert.Single(piece.Parts, part => part.Name == "Board");
        Assert.Equal((Made.Inches(19.25m), Made.Inches(9.25m)), (board.Length.Value, board.Width.Value));
        var lippings = piece.Copies("Lipping").Select(copy => copy.Box).ToList();
        Assert.Equal([Made.Inches(20), Made.Inches(0.75m)], lippings.Select(box => box.Dx));
        Assert.Equal([Made.Inches(0.75m), Made.Inches(9.25m)], lippings.Select(box => box.Dy));
        Assert.Equal(
            new Box(Length.Zero, Length.Zero, Length.Zero, Made.Inches(20), Made.Inches(10), Made.Inches(0.75m)),
            lippings.Append(board.Copies[0].Box).Aggregate((a, b) => a.Around(b))
        );
        Assert.DoesNotContain(piece.Warnings, one => one.Severity == Severity.Fails);
        Assert.Equal([EdgeWork.Lipping, EdgeWork.Lipping, EdgeWork.RoundOver], board.Copies[0].Edges.Select(edge => edge.Work));
    }

    [Theory]
    [MemberData(nameof(BuiltInDesignTests.Names), MemberType = typeof(BuiltInDesignTests))]
    public void Front_edges_of_plywood_shelves_and_dividers_are_treated(string name)
    {
        var piece = DesignEvaluator.Evaluate(DesignFiles.Read(name), new Dictionary<string, string>()).Piece!;
        var bare = piece
            .Parts.Where(part => part.Name is "Shelf" or "Fixed shelf" or "Divider" or "Drop-in shelf")
            .Where(part => part.Material.Form == MaterialForm.Sheet)
            .SelectMany(part => part.Copies)
            .Where(copy => copy.Edges.All(edge => edge.Side != BoxSide.Front));
        Assert.Empty(bare);
    }

    private static Piece Shelf(string edge) => Made.Piece(Case(edge));

    private static string Case(string edge) =>
        Made.Carcass(
                "35 1/2",
                "11 1/2",
                "30",
                $$"""{ "kind": "adjustable-shelves", "material": "case", "count": 1, "edge": "{{edge}}", "edge_material": "strip" }"""
            )
            .Replace("\"materials\": [", "\"materials\": [ " + Strip, StringComparison.Ordinal)
            .Replace(
                "\"name\": \"Plywood\", \"form\": \"sheet\",",
                "\"name\": \"Plywood\", \"form\": \"sheet\", \"species\": \"plywood\",",
                StringComparison.Ordinal
            );

    private static string Free(string edges) =>
        $$"""
            {
              "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Edged",
              "dimensions": [ { "name": "width", "value": "20" }, { "name": "depth", "value": "10" }, { "name": "height", "value": "3/4" } ],
              "materials": [ {{Strip}} { "role": "ply", "name": "Plywood", "form": "sheet", "thickness": "3/4" } ],
              "frame": { "kind": "none" },
              "parts": [ { "name": "Board", "material": "ply", "length": "20 in", "width": "10 in", "along": "x", "flat": "z",
                "at": [ [ "0 in", "0 in", "0 in" ] ], "edges": [ {{edges}} ] } ]
            }
            """;
}
