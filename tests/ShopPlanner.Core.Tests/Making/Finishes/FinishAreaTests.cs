using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Finishes;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>Areas to finish: worked examples of a paint estimate, and every built-in design recomputed another way.</summary>
public sealed class FinishAreaTests
{
    private const int Trials = 12;

    public static TheoryData<string> Names => [.. DesignFiles.Names];

    // Plain geometry: two faces and four edges.
    [Theory]
    [InlineData("Table top", 48, 24, 0.75, 2412)]
    [InlineData("Door", 24, 15, 0.75, 778.5)]
    [InlineData("Shelf", 36, 11.25, 0.75, 880.875)]
    public void Of_a_listed_part_all_faces_are_finished(string name, double length, double width, double thick, double inches)
    {
        var part = Finished.Part(name, (decimal)length, (decimal)width, (decimal)thick, "Pine 1x12");
        var area = Assert.Single(FinishPlanner.Of(name, LengthUnit.Inch, [part], Finished.Usual).Amounts!.Areas);
        Assert.Equal((name, SquareInches(inches), Area.Zero), (area.Part, area.Area, area.BeforeAssembly));
    }

    [Theory]
    [InlineData("Table top", 48, 24, 0.75, 16.75)]
    [InlineData("Door", 24, 15, 0.75, 5.41)]
    [InlineData("Shelf", 36, 11.25, 0.75, 6.12)]
    public void The_same_in_square_feet(string name, double length, double width, double thick, double feet)
    {
        var part = Finished.Part(name, (decimal)length, (decimal)width, (decimal)thick, "Pine 1x12");
        var area = FinishPlanner.Of(name, LengthUnit.Inch, [part], Finished.Usual).Amounts!.Areas[0].Area;
        Assert.Equal(feet, (double)area.ToSquareFeet(), 0.01);
    }

    [Theory, MemberData(nameof(Names))]
    public void Of_a_design_they_are_those_of_every_cell_that_meets_the_air(string name)
    {
        var document = DesignFiles.Read(name);
        foreach (var values in DesignValues.Of(document, Trials, 20261203).TakeLast(Trials).Prepend([]))
        {
            var piece = DesignEvaluator.Evaluate(document, values).Piece!;
            var swept = new SweptAreas(piece);
            var said = name + ": " + string.Join(", ", values.Select(one => one.Key + "=" + one.Value));
            foreach (var area in FinishPlanner.Of(piece, Finished.Usual with { PanelEdgesBefore = false }).Amounts!.Areas)
            {
                var (open, close) = swept.Of(piece.Parts.Single(part => part.Id == area.Part), FinishFigures.Reach.Value.Ticks);
                Assert.True(open == area.Area.SquareTicks, $"{said}: {area.Part} has {area.Area.SquareTicks}, swept {open}");
                Assert.True(close <= area.BeforeAssembly.SquareTicks, $"{said}: {area.Part} leaves what is close for later");
                Assert.True(area.BeforeAssembly <= area.Area, $"{said}: {area.Part} has more before than there is");
            }
        }
    }

    // Frames, splits and fills of any kind, at any size.
    [Theory]
    [InlineData("sheet-carcass")]
    [InlineData("post-and-rail")]
    [InlineData("post-cabinet")]
    [InlineData("box")]
    [InlineData("drawer-table")]
    public void Of_random_designs_too(string frame)
    {
        var (chance, seen) = (new Random(20261204), 0);
        for (var i = 0; i < 60; i++)
            if (Made.Evaluate(RandomDesigns.Next(frame, chance)).Piece is { } piece && CanBeBuilt(piece))
            {
                seen++;
                var swept = new SweptAreas(piece);
                foreach (var area in FinishPlanner.Of(piece, Finished.Usual).Amounts!.Areas)
                    Assert.Equal(swept.Of(piece.Parts.Single(part => part.Id == area.Part), 0).Open, area.Area.SquareTicks);
            }

        Assert.True(seen > 10, $"only {seen} of them can be built");
    }

    // Where two parts are in one place, nothing says whose wood it is.
    private static bool CanBeBuilt(Piece piece) =>
        !piece.Warnings.Any(warning => warning.Text.Contains("in the same place", StringComparison.Ordinal));

    [Fact]
    public void A_place_that_two_parts_touch_is_taken_off_once()
    {
        // Two rails lie across a board, and a block lies on both crossing places and beside them.
        var piece = Boxes(
            ("Board", "0 in", "0 in", "0 in", "20 in"),
            ("Rail", "2 in", "0 in", "3/4 in", "4 in"),
            ("Block", "4 in", "0 in", "3/4 in", "4 in")
        );
        var board = Finish(piece, "Board");
        // All faces, less six of the twenty inches: the block stands two inches within the rail.
        var all = SquareInches((2 * 20 * 2.5) + (2 * 20 * 0.75) + (2 * 2.5 * 0.75));
        Assert.Equal(all - SquareInches(6 * 2.5), board);
    }

    [Fact]
    public void A_door_covers_nothing_for_good()
    {
        var without = Made.Piece(Made.Carcass("24", "12", "30", ""));
        var with = Made.Piece(
            Made.Carcass(
                "24",
                "12.75",
                "30",
                """{ "kind": "doors", "make": "slab", "material": "case", "leaves": 1, "fit": "overlay", "overlay": "3/8 in" }"""
            )
        );
        Assert.Equal(Finish(without, "Side"), Finish(with, "Side"));
        var door = with.Parts.Single(part => part.Name == "Door");
        Assert.Equal(FinishFacesOf(door), Finish(with, "Door"));
    }

    [Fact]
    public void Slats_closer_than_a_hand_are_finished_before_they_go_on()
    {
        var piece = Finished.Piece("post-and-rail-cabinet");
        var slat = FinishPlanner.Of(piece, Finished.Usual).Amounts!.Areas.Single(area => area.Part == PartOf(piece, "Slat").Id);
        Assert.True(slat.BeforeAssembly > Area.Zero);
    }

    private static Area Finish(Piece piece, string name) =>
        FinishPlanner
            .Of(piece, Finished.Usual)
            .Amounts!.Areas.Where(area => piece.Parts.Any(part => part.Id == area.Part && part.Name == name))
            .Aggregate(Area.Zero, (sum, area) => sum + area.Area);

    private static PiecePart PartOf(Piece piece, string name) => piece.Parts.First(part => part.Name == name);

    private static Area FinishFacesOf(PiecePart part) =>
        FinishFaces.All.Of(part.Length.Value, part.Width.Value, part.Thickness.Value) * part.Copies.Length;

    private static Area SquareInches(double inches) => Area.Of(Length.FromInches((decimal)inches), Length.FromInches(1));

    // Boards of 2 1/2 in that lie flat along x, each at its corner.
    private static Piece Boxes(params (string Name, string X, string Y, string Z, string Long)[] boards) =>
        Made.Piece(
            $$"""
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Boards",
              "dimensions": [
                { "name": "width", "value": "20" }, { "name": "depth", "value": "2 1/2" }, { "name": "height", "value": "1 1/2" }
              ],
              "materials": [ { "role": "board", "name": "Pine 1x3", "form": "board", "thickness": "3/4", "width": "2 1/2" } ],
              "frame": { "kind": "none" },
              "parts": [ {{string.Join(
                ", ",
                boards.Select(one =>
                    $$"""
                    { "name": "{{one.Name}}", "material": "board", "length": "{{one.Long}}", "along": "x", "flat": "z",
                      "at": [ [ "{{one.X}}", "{{one.Y}}", "{{one.Z}}" ] ] }
                    """
                )
            )}} ]
            }
            """
        );
}
