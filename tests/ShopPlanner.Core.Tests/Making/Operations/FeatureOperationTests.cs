using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Operations;

/// <summary>What a design cuts out of parts beside their joints is done once on every copy, at the figures of its room.</summary>
public sealed class FeatureOperationTests
{
    private static readonly Dictionary<Type, WorkAction[]> Actions = new()
    {
        [typeof(Hole)] = [WorkAction.Drill],
        [typeof(Slot)] = [WorkAction.Groove, WorkAction.Dado, WorkAction.Rabbet],
        [typeof(Notch)] = [WorkAction.Notch],
        [typeof(Bevel)] = [WorkAction.Shape],
        [typeof(Taper)] = [WorkAction.Shape],
        [typeof(Arc)] = [WorkAction.Shape],
        [typeof(Corner)] = [WorkAction.Shape],
    };

    public static TheoryData<string> Books =>
        [
            .. Directory
                .GetFiles(Path.Combine(DesignFiles.Root, "tests", "ShopPlanner.Core.Tests", "Designs", "Books"), "*.json")
                .Order(StringComparer.Ordinal),
        ];

    [Theory, MemberData(nameof(Books))]
    public void Pieces_of_books_are_shaped_once(string path) => Holds(Made.Piece(File.ReadAllText(path)));

    // A board 12 in long, 5 in wide and 3/4 in thick, standing on its edge.
    [Theory]
    [InlineData(
        """{ "kind": "hole", "face": "front", "x": "3 in", "z": "2 in", "diameter": "1/2 in", "depth": "3/8 in" }""",
        "hole:board"
    )]
    [InlineData(
        """{ "kind": "groove", "face": "back", "run": "x", "from": "2 in", "width": "1/4 in", "depth": "1/4 in" }""",
        "own-groove:board"
    )]
    [InlineData(
        """{ "kind": "groove", "face": "back", "run": "z", "from": "2 in", "width": "1/4 in", "depth": "1/4 in" }""",
        "own-dado:board"
    )]
    [InlineData(
        """{ "kind": "groove", "face": "back", "run": "x", "from": "0 in", "width": "1/4 in", "depth": "1/4 in" }""",
        "own-rabbet:board"
    )]
    [InlineData("""{ "kind": "notch", "through": "y", "edge": "left", "deep": "1 in", "long": "2 in" }""", "notch:board")]
    [InlineData("""{ "kind": "bevel", "edge": "left", "keeps": "front", "angle": 45 }""", "miter:board")]
    [InlineData("""{ "kind": "bevel", "edge": "top", "keeps": "back", "angle": 45, "reach": "1/8 in" }""", "slant:board")]
    [InlineData("""{ "kind": "taper", "faces": "top", "end": "left", "from": "6 in", "to": "4 1/2 in" }""", "taper:board")]
    [InlineData(
        """{ "kind": "arc", "edge": "bottom", "run": "x", "from": "2 in", "to": "2 in", "rise": "1/2 in" }""",
        "arc:board"
    )]
    [InlineData("""{ "kind": "corner", "through": "y", "radius": "1 in", "first": "top", "second": "right" }""", "round:board")]
    public void Every_kind_of_shape_is_a_step(string shape, string id)
    {
        var piece = Board(shape);
        Assert.Equal(["A1"], Worked.Steps(piece).Step(id).Handles);
        Holds(piece);
    }

    // From the board's own corner: 3 in of 12, 2 in of 5.
    [Fact]
    public void A_holes_center_is_measured_from_the_nearer_sides()
    {
        var step = Worked
            .Steps(
                Board(
                    """{ "kind": "hole", "face": "front", "x": "9 in", "z": "2 in", "diameter": "1/2 in", "depth": "3/8 in" }"""
                )
            )
            .Step("hole:board");
        Assert.Equal(Made.Inches(0.5m), step.Figure("Bit"));
        Assert.Equal(Made.Inches(0.375m), step.Figure("Depth"));
        Assert.Equal(Made.Inches(3), step.Figure("Center from the right end"));
        Assert.Equal(Made.Inches(2), step.Figure("Center from the lower edge"));
        Assert.Equal("front face", step.Face);
    }

    // A chord of 8 in and a rise of 1/2 in: (4² + 0.5²) ÷ 1 = 16 1/4 in.
    [Fact]
    public void An_arc_is_drawn_by_its_radius()
    {
        var step = Worked
            .Steps(Board("""{ "kind": "arc", "edge": "bottom", "run": "x", "from": "2 in", "to": "2 in", "rise": "1/2 in" }"""))
            .Step("arc:board");
        Assert.Equal(Made.Inches(16.25m), step.Figure("Radius"));
        Assert.Equal(Made.Inches(8), step.Figure("Chord"));
    }

    // Handwork in Wood (1910), p. 196: mortises before the taper.
    [Fact]
    public void Legs_are_mortised_before_they_are_tapered()
    {
        var json = File.ReadAllText(DesignFiles.PathOf("table"))
            .Replace(
                "\"steps\": [",
                """
                "shapes": [ { "of": "Leg", "kind": "taper", "faces": "inner", "end": "bottom", "from": "6 in", "to": "2 in" } ], "steps": [
                """,
                StringComparison.Ordinal
            );
        var steps = Worked.Steps(Made.Piece(json));
        var taper = steps.Step("taper:leg");
        Assert.Contains("mortise:frame:apron", taper.After);
        Assert.Equal(4, taper.Handles.Length);
        Assert.Contains("Handwork in Wood (1910), p. 196", taper.Source!.Text, StringComparison.Ordinal);
    }

    // Mission Furniture, part 3 (1912), p. 5-7: slats are housed between the rails, each by itself.
    [Fact]
    public void Housings_with_gaps_between_them_are_separate()
    {
        var path = Books.Single(one => one.Data.EndsWith("piano-bench.json", StringComparison.Ordinal)).Data;
        var steps = Worked.Steps(Made.Piece(File.ReadAllText(path)));
        var housed = steps.Single(one => one.Id.EndsWith(":slat", StringComparison.Ordinal));
        Assert.Equal(12, housed.Joints.Length);
        Assert.True(housed.Settings.Count(one => one.Name.StartsWith("Stops before", StringComparison.Ordinal)) >= 4);
    }

    private static void Holds(Piece piece)
    {
        var steps = Worked.Steps(piece);
        foreach (var copy in piece.Parts.SelectMany(part => part.Copies))
        foreach (var feature in copy.Features)
        {
            var room = feature.Room(copy.Box);
            Assert.Equal(copy.Box, copy.Box.Around(room));
            Assert.NotEmpty(Done(steps, copy.Mark, Actions[feature.GetType()]));
        }

        Assert.All(steps, step => Assert.All(step.Settings, one => Assert.True(one.Value.IsPositive, $"{step.Id} {one}")));
    }

    private static IEnumerable<WorkStep> Done(ImmutableArray<WorkStep> steps, string mark, WorkAction[] actions) =>
        steps.Where(one => actions.Contains(one.Action) && one.Handles.Contains(mark));

    private static Piece Board(string shape) =>
        Made.Piece(
            $$"""
            {
              "format": "shop-planner/design", "version": 2, "unit": "in", "name": "Board",
              "dimensions": [
                { "name": "width", "value": "12" }, { "name": "depth", "value": "3/4" }, { "name": "height", "value": "5" }
              ],
              "materials": [ { "role": "board", "name": "Oak", "form": "board", "thickness": "3/4", "width": "5" } ],
              "frame": { "kind": "none" },
              "parts": [ { "name": "Board", "material": "board", "length": "width", "along": "x", "flat": "y",
                "at": [ [ "0 in", "0 in", "0 in" ] ], "shapes": [ {{shape}} ] } ]
            }
            """
        );
}
