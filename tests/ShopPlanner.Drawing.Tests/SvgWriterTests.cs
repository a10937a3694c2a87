using System.Xml.Linq;
using ShopPlanner.Core.Materials;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests;

public sealed class SvgWriterTests
{
    [Fact]
    public void Board_is_written_as_approved() =>
        Golden("board", LayoutDrawing.Board(Samples.Board() with { HasGrain = false }, DrawingRoom.Phone));

    [Fact]
    public void Sheet_is_written_as_approved() =>
        Golden("sheet", LayoutDrawing.Sheet(Samples.Sheet() with { HasGrain = false }, DrawingRoom.Screen));

    [Fact]
    public void Names_are_text_and_never_markup()
    {
        const string name = "<script>alert('\u0001')</script> & \"x\" 🪚\uD800";
        var board = Samples.Board();
        var svg = SvgWriter.Write(
            LayoutDrawing.Board(board with { Title = name, Pieces = [board.Pieces[0] with { Name = name }] }, DrawingRoom.Screen),
            "d1"
        );
        var root = XDocument.Parse(svg).Root!;
        Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName == "script");
        Assert.Equal("<script>alert('')</script> & \"x\" 🪚", root.Elements().First(e => e.Name.LocalName == "title").Value);
    }

    [Fact]
    public void Ids_begin_with_the_drawings_own_and_are_pointed_to()
    {
        var svg = SvgWriter.Write(LayoutDrawing.Sheet(Samples.Sheet(), DrawingRoom.Screen), "sheet-7");
        var ids = new SvgText(svg).Ids.ToList();
        Assert.Equal(["sheet-7", "sheet-7-title", "sheet-7-desc"], ids);
        Assert.Equal("sheet-7-title sheet-7-desc", XDocument.Parse(svg).Root!.Attribute("aria-labelledby")!.Value);
    }

    [Fact]
    public void Description_names_stock_pieces_and_leftovers()
    {
        var drawing = LayoutDrawing.Board(Samples.Board(), DrawingRoom.Phone);
        Assert.StartsWith(
            "96 × 2 ½ inches. Pieces: C1 Rail 34 ½ × 2 ½; C2 Rail 34 ½ × 2 ½; D1 Block",
            drawing.Description,
            StringComparison.Ordinal
        );
        Assert.EndsWith("To keep: 19 ¾ × 2 ½.", drawing.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void File_of_its_own_carries_both_themes()
    {
        var drawing = LayoutDrawing.Board(Samples.Board(), DrawingRoom.Phone);
        Assert.Contains("prefers-color-scheme:dark", SvgWriter.Write(drawing, "d", alone: true), StringComparison.Ordinal);
        Assert.DoesNotContain("<style", SvgWriter.Write(drawing, "d"), StringComparison.Ordinal);
    }

    // SVG 2, 11.5: textLength is how long a text runs, whatever the font.
    [Fact]
    public void Texts_of_a_file_of_its_own_keep_the_length_that_they_were_measured_with()
    {
        var drawing = LayoutDrawing.Board(Samples.Board(), DrawingRoom.Phone);
        XNamespace svg = "http://www.w3.org/2000/svg";
        var texts = XDocument.Parse(SvgWriter.Write(drawing, "d", alone: true)).Descendants(svg + "text").ToList();
        var measured = drawing.Leaves().OfType<Caption>().Select(one => Math.Round(one.Length, 2)).Order();
        Assert.Equal(measured, texts.Select(one => (double)one.Attribute("textLength")!).Order());
        Assert.DoesNotContain("textLength", SvgWriter.Write(drawing, "d"), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_stroke_has_a_rule_in_the_style_sheet() =>
        Assert.All(
            Enum.GetValues<Stroke>(),
            stroke => Assert.Contains($".{Pen.Of(stroke).Style}{{", SvgStyle.Sheet, StringComparison.Ordinal)
        );

    /// <summary>Convention of ISO 128, from memory: two widths of line, two to one.</summary>
    [Fact]
    public void Visible_edges_are_twice_as_thick() =>
        Assert.Equal(2, Pen.Of(Stroke.Outline).Width / Pen.Of(Stroke.Thin).Width, 6);

    [Fact]
    public void Hatch_stays_in_its_box()
    {
        var box = new Box(10, 20, 33, 7);
        Assert.All(
            new Hatch(Stroke.Waste, box, 5).Parts.Cast<Line>(),
            line =>
            {
                foreach (var end in new[] { line.From, line.To })
                    Assert.True(
                        end.X >= box.X - 1e-9 && end.X <= box.Right + 1e-9 && end.Y >= box.Y - 1e-9 && end.Y <= box.Bottom + 1e-9
                    );
                Assert.Equal(line.To.X - line.From.X, line.From.Y - line.To.Y, 6);
            }
        );
    }

    [Fact]
    public void Materials_have_a_tint_that_svg_understands() =>
        Assert.All(MaterialCatalogue.StoreMaterials, m => Assert.Matches("^#[0-9A-F]{6}$", m.Tint));

    // What was written lands beside the test; if the change is wanted, it replaces the approved file in Golden.
    private static void Golden(string name, LineDrawing drawing)
    {
        var svg = SvgWriter.Write(drawing, name, alone: true) + "\n";
        var folder = Path.Combine(AppContext.BaseDirectory, "Golden");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, name + ".received.svg"), svg);
        var approved = Path.Combine(folder, name + ".svg");
        Assert.True(File.Exists(approved), $"there is no approved {approved}");
        Assert.Equal(File.ReadAllText(approved).ReplaceLineEndings("\n"), svg);
    }
}
