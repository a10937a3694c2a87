using System.Collections.Immutable;
using System.Xml.Linq;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;
using Box = ShopPlanner.Drawing.Shapes.Box;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>Drawings of the built-in designs: whole, within their page, and for two of them as they were looked at.</summary>
public sealed class PieceDrawingTests
{
    /// <summary>Set to a folder to write the drawings there, to be looked at and to renew the kept ones.</summary>
    private const string Folder = "SHOP_PLANNER_DRAWINGS";

    private static readonly DrawingRoom Paper = DrawingRoom.Paper(526, 420);

    public static TheoryData<string> Designs => [.. BuiltInPieces.Names];

    [Theory, MemberData(nameof(Designs))]
    public void Every_view_shows_every_part_within_its_page(string design)
    {
        var piece = BuiltInPieces.Read(design);
        foreach (var drawing in Views(piece).Values)
        {
            var marks = drawing.Shapes.OfType<Marked>().Select(one => one.Mark).ToHashSet();
            Assert.All(piece.Parts.SelectMany(part => part.Copies), copy => Assert.Contains(copy.Mark, marks));
            Assert.All(drawing.Leaves().Select(Extent), box => Within(box, drawing));
        }
    }

    [Theory, MemberData(nameof(Designs))]
    public void No_words_cover_other_words(string design)
    {
        foreach (var (view, drawing) in Views(BuiltInPieces.Read(design)))
        {
            var words = drawing.Leaves().OfType<Caption>().ToList();
            for (var i = 0; i < words.Count; i++)
            for (var k = i + 1; k < words.Count; k++)
                Assert.False(
                    words[i].Extent.Inset(0.6).Overlaps(words[k].Extent.Inset(0.6)),
                    $"{design}, {view}: {words[i].Words} covers {words[k].Words}"
                );
        }
    }

    [Theory, MemberData(nameof(Designs))]
    public void Drawn_apart_every_part_that_is_seen_has_its_mark(string design)
    {
        var piece = BuiltInPieces.Read(design);
        var rings = PieceDrawings.Exploded(piece, 640, 480).Leaves().OfType<Caption>().Select(one => one.Words).ToHashSet();
        Assert.All(
            piece.Parts.Where(part => !part.Copies.IsEmpty),
            part => Assert.True(rings.Contains(part.Id) || part.Copies.Any(copy => rings.Contains(copy.Mark)), part.Name)
        );
    }

    [Theory, MemberData(nameof(Designs))]
    public void Overall_dimensions_are_those_of_the_design(string design)
    {
        var outside = BuiltInPieces.Read(design).Outside;
        var unit = BuiltInPieces.Read(design).Unit;
        string Figure(Length length) => LengthFormat.Set(length, unit).Text;
        var figures = PieceDrawings
            .ThreeViews(BuiltInPieces.Read(design), Paper)
            .Shapes.OfType<Dimension>()
            .Select(one => one.Words)
            .ToList();
        Assert.All(new[] { outside.Dx, outside.Dy, outside.Dz }, length => Assert.Contains(Figure(length), figures));
    }

    // 60 in less toe space, and three times 23/32 in of plywood, leaves two clear heights of 27 11/64 in.
    [Fact]
    public void Clear_sizes_and_thicknesses_lie_nearer_than_the_outside_size_and_add_up()
    {
        var dimensions = PieceDrawings
            .Side(BuiltInPieces.Read("bookcase"), 600, 500)
            .Shapes.OfType<Dimension>()
            .Where(one => one.Run == Run.Up)
            .ToList();
        Assert.Equal(["²³⁄₃₂", "27 ¹¹⁄₆₄", "²³⁄₃₂", "27 ¹¹⁄₆₄", "²³⁄₃₂", "3 ½", "60"], dimensions.Select(one => one.Words));
        Assert.True(dimensions[^1].At < dimensions[0].At && dimensions[0].At == dimensions[1].At);
    }

    // 60 in: 2 in of overhang, legs of 3 1/2 in, 49 in between them.
    [Fact]
    public void Legs_and_overhang_of_a_table_are_dimensioned_in_a_chain_that_adds_up() =>
        Assert.Equal(
            ["2", "3 ½", "49", "3 ½", "2", "60"],
            PieceDrawings
                .Front(BuiltInPieces.Read("table"), 600, 500)
                .Shapes.OfType<Dimension>()
                .Where(one => one.Run == Run.Across)
                .Select(one => one.Words)
        );

    [Fact]
    public void Drawer_fronts_are_dimensioned()
    {
        var piece = BuiltInPieces.Read("drawer-chest");
        var figures = PieceDrawings.Front(piece, 600, 500).Shapes.OfType<Dimension>().Select(one => one.Words).ToList();
        Assert.All(
            piece.Parts.Where(part => part.Name == "Drawer front"),
            front => Assert.Contains(LengthFormat.Set(front.Width.Value, piece.Unit).Text, figures)
        );
    }

    [Fact]
    public void Paper_scale_is_a_whole_number_and_true()
    {
        var drawing = PieceDrawings.Front(BuiltInPieces.Read("table"), Paper);
        var scale = int.Parse(
            drawing
                .Leaves()
                .OfType<Caption>()
                .Single(c => c.Words.StartsWith("scale", StringComparison.Ordinal))
                .Words.Split(' ', ',')[3],
            System.Globalization.CultureInfo.InvariantCulture
        );
        Assert.Equal(
            60 * 72.0 / scale,
            drawing.Leaves().OfType<Patch>().Where(p => p.Fill == Fill.Wood).Max(p => p.Box.Width),
            6
        );
    }

    [Fact]
    public void What_is_chosen_is_drawn_in_chalk_in_every_view()
    {
        var piece = BuiltInPieces.Read("bookcase");
        var shelf = piece.Parts.Single(part => part.Name == "Fixed shelf").Copies[0].Mark;
        foreach (var drawing in Views(piece, shelf).Values)
        {
            var chalk = drawing
                .Primitives()
                .OfType<Marked>()
                .Where(one => one.Shapes.Any(IsChalk))
                .Select(one => one.Mark)
                .Distinct();
            Assert.Equal([shelf], chalk);
        }
    }

    // The notch of a side is 3 1/2 in high: on paper at the drawing's scale, above the foot of the side.
    [Fact]
    public void A_notch_is_drawn_where_it_is_cut()
    {
        var piece = BuiltInPieces.Read("bookcase");
        var side = piece.Parts.Single(part => part.Name == "Side").Copies[1];
        var drawing = PieceDrawings.Side(piece, 600, 500);
        var outline = Shapes(drawing, side.Mark).OfType<Polyline>().Single(one => one.Stroke == Stroke.Outline).Spots;
        Assert.Equal(6, outline.Length);
        var (foot, head) = (outline.Max(spot => spot.Y), outline.Min(spot => spot.Y));
        var share = side.ToeNotch!.High.Ticks / (double)side.Box.Dz.Ticks;
        Assert.Contains(outline, spot => Math.Abs(foot - spot.Y - (share * (foot - head))) < 0.01);
        var seen = Shapes(PieceDrawings.Isometric(piece, 600, 500), side.Mark).OfType<Face>().ToList();
        Assert.Equal([4, 4, 6, 4], seen.Select(face => face.Spots.Length));
        Assert.All(
            Shapes(PieceDrawings.Isometric(piece, 600, 500), piece.Parts.Single(part => part.Name == "Back").Copies[0].Mark)
                .OfType<Face>(),
            face => Assert.Equal(4, face.Spots.Length)
        );
    }

    private static IEnumerable<Shape> Shapes(LineDrawing drawing, string mark) =>
        drawing.Shapes.OfType<Marked>().Where(one => one.Mark == mark).SelectMany(one => one.Shapes);

    [Fact]
    public void A_tap_on_a_part_finds_its_mark()
    {
        var piece = BuiltInPieces.Read("table");
        var groups = XDocument
            .Parse(SvgWriter.Write(PieceDrawings.Isometric(piece, 600, 500), "t"))
            .Descendants()
            .Where(e => e.Name.LocalName == "g")
            .ToList();
        Assert.All(
            piece.Parts.SelectMany(part => part.Copies),
            copy =>
                Assert.Contains(
                    groups,
                    g => g.Attribute("data-mark")!.Value == copy.Mark && g.Elements().Any(e => e.Name.LocalName == "polygon")
                )
        );
    }

    [Theory]
    [
        InlineData("bookcase", "front"),
        InlineData("bookcase", "isometric"),
        InlineData("table", "front"),
        InlineData("table", "exploded")
    ]
    public void It_is_drawn_as_it_was_looked_at(string design, string view)
    {
        var svg = SvgWriter.Write(Views(BuiltInPieces.Read(design))[view], design + "-" + view, alone: true);
        var kept = Path.Combine(
            BuiltInPieces.Root,
            "tests",
            "ShopPlanner.Drawing.Tests",
            "Pieces",
            "Golden",
            $"{design}-{view}.svg"
        );
        Assert.True(
            File.Exists(kept) && File.ReadAllText(kept).ReplaceLineEndings("\n") == svg.ReplaceLineEndings("\n"),
            $"{design}, {view} is drawn otherwise than it was looked at: set {Folder} to a folder, look at what is written "
                + $"there, and copy it to {kept} where it is right"
        );
    }

    [Theory, MemberData(nameof(Designs))]
    public void Drawings_can_be_written_out_to_be_looked_at(string design)
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable(Folder) is { Length: > 0 }, $"{Folder} names no folder to write to");
        var piece = BuiltInPieces.Read(design);
        var details = JointDetails.Of(piece).Select((one, i) => KeyValuePair.Create($"joint{i + 1}", one.Drawing));
        foreach (var (view, drawing) in Views(piece).Concat(OnPhone(piece)).Concat(details))
            File.WriteAllText(
                Path.Combine(Environment.GetEnvironmentVariable(Folder)!, $"{design}-{view}.svg"),
                SvgWriter.Write(drawing, design + "-" + view, alone: true)
            );
    }

    internal static void Within(Box box, LineDrawing drawing) =>
        Assert.True(
            box.X >= -0.01 && box.Y >= -0.01 && box.Right <= drawing.Width + 0.01 && box.Bottom <= drawing.Height + 0.01,
            $"{drawing.Title}: {box} lies outside {drawing.Width} × {drawing.Height}"
        );

    internal static Box Extent(Shape shape) =>
        shape switch
        {
            Caption caption => caption.Extent,
            Frame frame => frame.Box,
            Patch patch => patch.Box,
            Face face => Around(face.Spots),
            Polyline polyline => Around(polyline.Spots),
            Line line => Around([line.From, line.To]),
            _ => throw new ArgumentException("an unknown shape", nameof(shape)),
        };

    private static Box Around(ImmutableArray<Spot> spots)
    {
        var (x, y) = (spots.Min(s => s.X), spots.Min(s => s.Y));
        return new(x, y, spots.Max(s => s.X) - x, spots.Max(s => s.Y) - y);
    }

    private static Dictionary<string, LineDrawing> OnPhone(Piece piece) =>
        new()
        {
            ["front-phone"] = PieceDrawings.Front(piece, DrawingRoom.PieceOnPhone),
            ["side-phone"] = PieceDrawings.Side(piece, DrawingRoom.PieceOnPhone),
            ["plan-phone"] = PieceDrawings.Plan(piece, DrawingRoom.PieceOnPhone),
            ["exploded-phone"] = PieceDrawings.Exploded(piece, DrawingRoom.PieceOnPhone),
        };

    private static bool IsChalk(Shape shape) => shape is Frame { Stroke: Stroke.NextCut } or Polyline { Stroke: Stroke.NextCut };

    private static Dictionary<string, LineDrawing> Views(Piece piece, string? chosen = null) =>
        new()
        {
            ["front"] = PieceDrawings.Front(piece, DrawingRoom.PieceOnScreen, chosen),
            ["side"] = PieceDrawings.Side(piece, DrawingRoom.PieceOnScreen, chosen),
            ["plan"] = PieceDrawings.Plan(piece, DrawingRoom.PieceOnScreen, chosen),
            ["isometric"] = PieceDrawings.Isometric(piece, 600, 500, chosen),
            ["exploded"] = PieceDrawings.Exploded(piece, DrawingRoom.PieceOnScreen, chosen),
            ["three"] = PieceDrawings.ThreeViews(piece, Paper, chosen),
        };
}
