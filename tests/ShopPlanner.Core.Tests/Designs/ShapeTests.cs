using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>What is cut out of parts: where it lies in the wood, what it leaves of joints, and which copies are alike with it.
/// Figures are plain geometry.</summary>
public sealed class ShapeTests
{
    [Fact]
    public void A_hole_lies_where_its_face_and_its_two_distances_say()
    {
        var hole = Assert.IsType<Hole>(
            Assert.Single(Board("""{ "kind": "hole", "face": "front", "x": "3 in", "z": "2 in", "diameter": "1 in" }""").Features)
        );
        Assert.Equal((BoxSide.Front, Made.Inches(3), Made.Inches(2)), (hole.Face, hole.First, hole.Second));
        Assert.Null(hole.Depth);
        Assert.Equal(Cut(2.5m, 0, 1.5m, 1, 0.75m, 1), hole.Room(Whole));
    }

    [Fact]
    public void A_row_of_holes_is_as_many_as_its_count_a_step_apart()
    {
        var holes = Board(
            """
            { "kind": "hole", "face": "back", "x": "1 in", "z": "1 in", "diameter": "1/4 in", "depth": "3/8 in",
              "count": 4, "row": "x", "step": "2 in" }
            """
        );
        Assert.Equal([1m, 3, 5, 7], holes.Features.Cast<Hole>().Select(hole => hole.First.ToInches()));
        Assert.All(holes.Features, hole => Assert.Equal(Made.Inches(0.375m), hole.Room(Whole).Y));
    }

    [Theory]
    [InlineData(""" "from": "1 in" """, 1, 0, 12)]
    [InlineData(""" "from": "1 in", "measured": "far" """, 3.75, 0, 12)]
    [InlineData(""" "start": "2 in", "end": "1 in" """, 0, 2, 9)]
    public void A_groove_runs_through_or_is_stopped(string more, double from, double start, double run)
    {
        var groove = Board(
            $$"""{ "kind": "groove", "face": "front", "run": "x", "width": "1/4 in", "depth": "3/8 in", {{more}} }"""
        );
        Assert.Equal(
            Cut((decimal)start, 0, (decimal)from, (decimal)run, 0.375m, 0.25m),
            Assert.Single(groove.Features).Room(Whole)
        );
        Assert.Equal(from < 0.5, Assert.IsType<Slot>(groove.Features[0]).IsRabbet(Whole));
    }

    [Theory]
    [InlineData("left", "near", 0, 0, 1, 2)]
    [InlineData("left", "far", 0, 3, 1, 2)]
    [InlineData("right", "near", 11, 0, 1, 2)]
    [InlineData("top", "near", 0, 4, 2, 1)]
    [InlineData("bottom", "far", 10, 0, 2, 1)]
    public void A_notch_may_be_at_any_corner(string edge, string measured, double x, double z, double dx, double dz)
    {
        var notch = Board(
            $$"""{ "kind": "notch", "through": "y", "edge": "{{edge}}", "deep": "1 in", "long": "2 in", "measured": "{{measured}}" }"""
        );
        Assert.Equal(Cut((decimal)x, 0, (decimal)z, (decimal)dx, 0.75m, (decimal)dz), Assert.Single(notch.Features).Room(Whole));
    }

    [Fact]
    public void A_bevel_takes_off_as_much_as_its_angle_says()
    {
        var miter = Board("""{ "kind": "bevel", "edge": "left", "keeps": "front", "angle": 45 }""");
        Assert.Equal(Cut(0, 0, 0, 0.75m, 0.75m, 5), Assert.Single(miter.Features).Room(Whole));
        var chamfer = Board("""{ "kind": "bevel", "edge": "top", "keeps": "back", "angle": 45, "reach": "1/8 in" }""");
        Assert.Equal(Cut(0, 0, 4.875m, 12, 0.125m, 0.125m), Assert.Single(chamfer.Features).Room(Whole));
        // The tangent of 30 degrees times 3/4 in.
        var slant = Board("""{ "kind": "bevel", "edge": "right", "keeps": "back", "angle": 30 }""").Features[0].Room(Whole);
        Assert.Equal(0.433m, Math.Round(slant.Dx.ToInches(), 3));
    }

    // A chord of 48 in and a rise of 6 in: (24² + 6²) ÷ 12 = 51 in.
    [Fact]
    public void The_radius_of_an_arc_follows_from_chord_and_rise()
    {
        var arc = new Arc(BoxSide.Bottom, Axis.X, Length.Zero, Made.Inches(48), Made.Inches(6), IsHollow: true);
        Assert.Equal(Made.Inches(51), arc.Radius);
    }

    [Fact]
    public void Rounded_corners_are_all_four_or_the_one_that_is_named()
    {
        var all = Board("""{ "kind": "corner", "through": "y", "radius": "1 in" }""").Features;
        Assert.Equal(4, all.Select(one => one.Room(Whole)).Distinct().Count());
        var one = Board("""{ "kind": "corner", "through": "y", "radius": "1 in", "first": "top", "second": "right" }""").Features;
        Assert.Equal(Cut(11, 0, 4, 1, 0.75m, 1), Assert.Single(one).Room(Whole));
    }

    [Fact]
    public void Legs_of_a_frame_are_tapered_on_their_inner_faces()
    {
        var json = File.ReadAllText(DesignFiles.PathOf("table"))
            .Replace("\"version\": 1", "\"version\": 2", StringComparison.Ordinal)
            .Replace(
                "\"steps\": [",
                """
                "shapes": [ { "of": "Leg", "kind": "taper", "faces": "inner", "end": "bottom", "from": "6 in", "to": "2 in" } ], "steps": [
                """,
                StringComparison.Ordinal
            );
        var piece = Made.Piece(json);
        var part = Assert.Single(piece.Parts, one => one.Name == "Leg");
        Assert.Equal(4, part.Copies.Length);
        foreach (var leg in part.Copies)
        {
            var faces = leg.Features.Cast<Taper>().Select(taper => taper.Face).Order().ToList();
            BoxSide[] inner =
            [
                leg.Box.X < Made.Inches(20) ? BoxSide.Right : BoxSide.Left,
                leg.Box.Y < Made.Inches(10) ? BoxSide.Back : BoxSide.Front,
            ];
            Assert.Equal(inner.Order(), faces);
            Assert.All(
                leg.Features.Cast<Taper>(),
                taper => Assert.Equal((Made.Inches(1.5m), leg.Box.Dz - Made.Inches(6)), (taper.Off, taper.Long))
            );
        }
    }

    [Fact]
    public void A_taper_that_reaches_the_mortises_is_refused()
    {
        var json = File.ReadAllText(DesignFiles.PathOf("table"))
            .Replace(
                "\"steps\": [",
                """
                "shapes": [ { "of": "Leg", "kind": "taper", "faces": "inner", "end": "bottom", "from": "1 in", "to": "2 in" } ], "steps": [
                """,
                StringComparison.Ordinal
            );
        var fault = Made.Evaluate(json).Faults[0];
        Assert.Equal("shapes.0", fault.Field);
        Assert.StartsWith("takes wood from the joint of the leg and the", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Copies_with_other_cuts_are_other_parts_and_mirrored_ones_are_left_and_right()
    {
        const string hole =
            """{ "kind": "hole", "face": "top", "x": "2 in", "y": "1/2 in", "diameter": "1/2 in", "depth": "1/4 in" """;
        string Pair(string mirror) =>
            $$"""
                { "name": "Slat", "material": "wood", "length": "8 in", "along": "x", "flat": "z",
                  "at": [ [ "0 in", "0 in", "0 in" ], [ "22 in", "0 in", "0 in" ] ],
                  "shapes": [ {{hole}}{{mirror}} } ] }
                """;
        var mirrored = Assert.Single(Made.Piece(Bench(Pair(""", "mirror": "x" """))).Parts, part => part.Name == "Slat");
        Assert.Equal([Hand.Left, Hand.Right], mirrored.Copies.Select(copy => copy.Hand));
        Assert.Equal([2m, 6], mirrored.Copies.Select(copy => ((Hole)copy.Features[0]).First.ToInches()));
        var same = Assert.Single(Made.Piece(Bench(Pair(""))).Parts, part => part.Name == "Slat");
        Assert.All(same.Copies, copy => Assert.Equal(Hand.Either, copy.Hand));
        var plain =
            """, { "name": "Slat", "material": "wood", "length": "8 in", "along": "x", "flat": "z", "at": [ [ "0 in", "9 in", "0 in" ] ] }""";
        Assert.Equal(2, Made.Piece(Bench(Pair("") + plain)).Parts.Count(part => part.Name == "Slat"));
    }

    // Mitered at all four corners: the boxes overlap there, the wood does not.
    [Fact]
    public void A_mitered_frame_is_joined_in_its_miters_and_nothing_is_in_one_place()
    {
        const string frame = """
            { "name": "Rail", "material": "wood", "length": "width", "along": "x", "flat": "z",
              "at": [ [ "0 in", "0 in", "0 in" ], [ "0 in", "depth - 2 in", "0 in" ] ],
              "joints": [ { "with": "Stile", "kind": "glued", "along": "x" } ],
              "shapes": [ { "kind": "bevel", "edge": "left", "keeps": "front", "angle": 45, "mirror": "y" },
                          { "kind": "bevel", "edge": "right", "keeps": "front", "angle": 45, "mirror": "y" } ] },
            { "name": "Stile", "material": "wood", "length": "depth", "along": "y", "flat": "z",
              "at": [ [ "0 in", "0 in", "0 in" ], [ "width - 2 in", "0 in", "0 in" ] ],
              "shapes": [ { "kind": "bevel", "edge": "front", "keeps": "left", "angle": 45, "mirror": "x" },
                          { "kind": "bevel", "edge": "back", "keeps": "left", "angle": 45, "mirror": "x" } ] }
            """;
        var piece = Made.Piece(Bench(frame));
        Assert.Equal(4, piece.Joints.Length);
        Assert.DoesNotContain(piece.Warnings, one => one.Severity == Severity.Fails);
        Assert.Equal(2, piece.Parts.Length);
    }

    [Fact]
    public void The_parts_file_names_every_shape_with_its_least_box()
    {
        var piece = Made.Piece(
            Bench(
                Part(
                    """
                    { "kind": "hole", "face": "front", "x": "3 in", "z": "2 in", "diameter": "1 in", "depth": "1/2 in" },
                    { "kind": "groove", "face": "back", "run": "x", "from": "4 1/2 in", "width": "1/4 in", "depth": "1/4 in" },
                    { "kind": "notch", "through": "y", "edge": "bottom", "deep": "1/2 in", "long": "2 in" },
                    { "kind": "bevel", "edge": "right", "keeps": "back", "angle": 22.5 },
                    { "kind": "taper", "faces": "top", "end": "left", "from": "6 in", "to": "4 1/2 in" },
                    { "kind": "arc", "edge": "bottom", "run": "x", "from": "4 in", "to": "4 in", "rise": "1/2 in" },
                    { "kind": "corner", "through": "y", "radius": "1/4 in", "first": "bottom", "second": "right" }
                    """
                )
            )
        );
        using var json = JsonDocument.Parse(PartsJson.Write(piece));
        var shapes = json
            .RootElement.GetProperty("parts")[0]
            .GetProperty("copies")[0]
            .GetProperty("shapes")
            .EnumerateArray()
            .ToList();
        Assert.Equal(
            ["hole", "groove", "notch", "bevel", "taper", "arc", "corner"],
            shapes.Select(shape => shape.GetProperty("kind").GetString())
        );
        Assert.Equal((2.5m, 0m, 1.5m, 1m, 0.5m, 1m), (Of(0, "x"), Of(0, "y"), Of(0, "z"), Of(0, "dx"), Of(0, "dy"), Of(0, "dz")));
        Assert.Equal((0.5m, 22.5m, 0.25m), (Of(0, "depth"), Of(3, "angle"), Of(6, "radius")));

        decimal Of(int shape, string name) => shapes[shape].GetProperty(name).GetDecimal();
    }

    [Fact]
    public void Shapes_read_as_a_builder_says_them()
    {
        var copy = Board(
            """
            { "kind": "hole", "face": "front", "x": "3 in", "z": "2 in", "diameter": "1 in" },
            { "kind": "notch", "through": "y", "edge": "right", "deep": "1 in", "long": "2 in" },
            { "kind": "bevel", "edge": "left", "keeps": "back", "angle": 22.5 }
            """
        );
        Assert.Equal(
            [
                "Hole 1″ wide, right through, from the front: 3″ from the left and 2″ from the bottom.",
                "Notch 1″ by 2″, 11″ from the left and 0″ from the bottom.",
                "Bevel of 22.5° at the left, full size at the back.",
            ],
            FeatureText.Of(copy, LengthUnit.Inch)
        );
    }

    [Fact]
    public void A_document_with_shapes_is_of_the_second_version_and_reads_back_equal()
    {
        var reading = DesignJson.Read(
            Encoding.UTF8.GetBytes(Bench(Part("""{ "kind": "corner", "through": "y", "radius": "1 in" }""")))
        );
        var text = DesignJson.Write(reading.Document!);
        Assert.Contains("\"version\": 2", text, StringComparison.Ordinal);
        Assert.Equal(text, DesignJson.Write(DesignJson.Read(Encoding.UTF8.GetBytes(text)).Document!));
    }

    private static Box Whole => new(Length.Zero, Length.Zero, Length.Zero, Made.Inches(12), Made.Inches(0.75m), Made.Inches(5));

    private static Box Cut(decimal x, decimal y, decimal z, decimal dx, decimal dy, decimal dz) =>
        new(Made.Inches(x), Made.Inches(y), Made.Inches(z), Made.Inches(dx), Made.Inches(dy), Made.Inches(dz));

    private static PartCopy Board(string shapes) => Assert.Single(Assert.Single(Made.Piece(Bench(Part(shapes))).Parts).Copies);

    // 12 in along x, 3/4 in from front to back, 5 in high.
    private static string Part(string shapes) =>
        $$"""
            { "name": "Board", "material": "sheet", "length": "12 in", "width": "5 in", "along": "x", "flat": "y",
              "at": [ [ "0 in", "0 in", "0 in" ] ], "shapes": [ {{shapes}} ] }
            """;

    private static string Bench(string parts) =>
        $$"""
            {
              "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Shaped",
              "dimensions": [ { "name": "width", "value": "30" }, { "name": "depth", "value": "20" }, { "name": "height", "value": "5" } ],
              "materials": [
                { "role": "sheet", "name": "Plywood", "form": "sheet", "thickness": "3/4" },
                { "role": "wood", "name": "Pine", "form": "board", "thickness": "3/4", "width": "2" }
              ],
              "frame": { "kind": "none" },
              "parts": [ {{parts}} ]
            }
            """;
}
