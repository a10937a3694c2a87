using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests;

/// <summary>Bad places are crosshatched where they are, and said in words.</summary>
public sealed class BadPlaceTests
{
    private const string Note = "Crosshatched: bad place, keep out";

    private static readonly StockArea Knot = new(In("80"), In("1/2"), In("4"), In("1"));

    private static readonly DrawingRoom[] Rooms = [DrawingRoom.Phone, DrawingRoom.Screen, DrawingRoom.Paper(526, 300)];

    public static TheoryData<int> EveryRoom => [0, 1, 2];

    [Theory]
    [MemberData(nameof(EveryRoom))]
    public void A_bad_place_is_hatched_to_scale_inside_its_box(int room)
    {
        var svg = Read(LayoutDrawing.Board(Spoiled(Samples.Board()), Rooms[room]));
        var (wood, bad) = (svg.Rectangles("wood")[0], svg.Rectangles("bad-place").Single());
        Assert.Equal(wood.X + (wood.Width * 80 / 96), bad.X, 0.02);
        Assert.Equal(wood.Width * 4 / 96, bad.Width, 0.02);
        Assert.Equal(wood.Height / 2.5, bad.Height, 0.02);
        Assert.Contains(svg.Texts, text => text.Words == Note);
    }

    [Fact]
    public void A_crosshatch_stays_in_its_box_and_runs_both_ways()
    {
        var box = new Box(10, 20, 31, 7);
        var parts = new CrossHatch(Stroke.BadPlace, box, 4).Parts;
        var lines = parts.OfType<Line>().ToList();
        Assert.All(lines.SelectMany(line => new[] { line.From, line.To }), spot => Assert.True(IsIn(spot, box), $"{spot}"));
        Assert.Equal(lines.Count(IsRising), lines.Count(line => !IsRising(line)));
        Assert.Equal(box, parts.OfType<Frame>().Single().Box);
    }

    [Fact]
    public void Those_who_cannot_see_the_drawing_are_told()
    {
        var drawing = LayoutDrawing.Board(Spoiled(Samples.Board()), DrawingRoom.Screen);
        Assert.EndsWith(" Bad: 4 × 1, 80 from the left end, ½ from the top edge.", drawing.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Sound_wood_has_no_legend()
    {
        var drawing = LayoutDrawing.Board(Samples.Board(), DrawingRoom.Screen);
        Assert.DoesNotContain(Read(drawing).Texts, text => text.Words.Contains("bad", StringComparison.Ordinal));
        Assert.DoesNotContain("Bad", drawing.Description, StringComparison.Ordinal);
    }

    // A piece in the rack: nothing is cut from it yet.
    [Theory]
    [MemberData(nameof(EveryRoom))]
    public void A_piece_without_a_plan_is_drawn_with_its_size(int room)
    {
        var (board, sheet) = (Bare(Samples.Board()), Bare(Samples.Sheet()));
        foreach (var drawing in new[] { LayoutDrawing.Board(board, Rooms[room]), LayoutDrawing.Sheet(sheet, Rooms[room]) })
        {
            var svg = Read(drawing);
            Assert.Contains(svg.Texts, text => text.Words == "96");
            Assert.All(svg.Everything, box => Assert.True(box.Right <= svg.Page.Right + 0.1, $"{box}"));
            Assert.DoesNotContain("Pieces", drawing.Description, StringComparison.Ordinal);
        }
    }

    private static bool IsIn(Spot spot, Box box) =>
        spot.X >= box.X - 1e-9 && spot.X <= box.Right + 1e-9 && spot.Y >= box.Y - 1e-9 && spot.Y <= box.Bottom + 1e-9;

    private static bool IsRising(Line line) => (line.To.X - line.From.X) * (line.To.Y - line.From.Y) < 0;

    private static LayoutPicture Spoiled(LayoutPicture picture) => picture with { BadPlaces = [Knot] };

    private static LayoutPicture Bare(LayoutPicture picture) => Spoiled(picture) with { Pieces = [], Leftovers = [], Cuts = [] };

    private static SvgText Read(LineDrawing drawing) => new(SvgWriter.Write(drawing, "d"));

    private static Length In(string text) => Samples.In(text);
}
