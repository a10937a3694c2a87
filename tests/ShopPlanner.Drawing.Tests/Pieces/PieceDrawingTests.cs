using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>Drawings of the built-in designs: whole, within their page, and for two of them as they were looked at.</summary>
public sealed class PieceDrawingTests
{
    /// <summary>Set to a folder to write the drawings there, to be looked at and to renew the kept ones.</summary>
    private const string Folder = "SHOP_PLANNER_DRAWINGS";

    public static TheoryData<string> Designs =>
        [.. Directory.GetFiles(Path.Combine(Root, "wwwroot-assets", "designs"), "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Designs))]
    public void Every_view_shows_every_part_within_its_page(string design)
    {
        var piece = Read(design);
        foreach (var drawing in Views(piece).Values)
        {
            var marks = drawing.Shapes.OfType<Marked>().Select(one => one.Mark).ToHashSet();
            Assert.All(piece.Parts.SelectMany(part => part.Copies), copy => Assert.Contains(copy.Mark, marks));
            Assert.All(drawing.Primitives().OfType<Marked>().SelectMany(one => one.Shapes).OfType<Face>().SelectMany(face => face.Spots), spot => Within(spot, drawing));
            Assert.All(drawing.Primitives().OfType<Marked>().SelectMany(one => one.Shapes).OfType<Frame>(), frame => Within(new(frame.Box.Right, frame.Box.Bottom), drawing));
            Assert.All(drawing.Primitives().OfType<Caption>(), caption => Within(new(caption.Extent.X, caption.Extent.Y), drawing));
        }
    }

    [Theory, MemberData(nameof(Designs))]
    public void Overall_dimensions_are_those_of_the_design(string design)
    {
        var piece = Read(design);
        var figures = PieceDrawings.Front(piece, 600, 500).Shapes.OfType<Dimension>().Select(one => one.Words).ToList();
        Assert.Contains(Core.Measures.LengthFormat.Set(piece.Outside.Dx, piece.Unit, 32).WithSign, figures);
        Assert.Contains(Core.Measures.LengthFormat.Set(piece.Outside.Dz, piece.Unit, 32).WithSign, figures);
    }

    [Theory]
    [InlineData("bookcase", "front"), InlineData("bookcase", "isometric"), InlineData("table", "front"), InlineData("table", "exploded")]
    public void It_is_drawn_as_it_was_looked_at(string design, string view)
    {
        var svg = SvgWriter.Write(Views(Read(design))[view], design + "-" + view, alone: true);
        var kept = Path.Combine(Root, "tests", "ShopPlanner.Drawing.Tests", "Pieces", "Golden", $"{design}-{view}.svg");
        Assert.True(File.Exists(kept) && File.ReadAllText(kept).ReplaceLineEndings("\n") == svg.ReplaceLineEndings("\n"),
            $"{design}, {view} is drawn otherwise than it was looked at: set {Folder} to a folder, look at what is written there, and copy it to {kept} where it is right");
    }

    [Fact]
    public void A_nearer_part_is_painted_after_a_farther_one()
    {
        var piece = Read("pantry-cupboard");
        var order = PieceDrawings.Isometric(piece, 600, 500).Shapes.OfType<Marked>().Select(one => one.Mark).ToList();
        var door = piece.Parts.Single(part => part.Name == "Door panel").Copies[0].Mark;
        var back = piece.Parts.Single(part => part.Name == "Back").Copies[0].Mark;
        Assert.True(order.IndexOf(back) < order.IndexOf(door));
    }

    [Theory, MemberData(nameof(Designs))]
    public void Drawings_can_be_written_out_to_be_looked_at(string design)
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable(Folder) is { Length: > 0 }, $"{Folder} names no folder to write to");
        foreach (var (view, drawing) in Views(Read(design)))
            File.WriteAllText(Path.Combine(Environment.GetEnvironmentVariable(Folder)!, $"{design}-{view}.svg"), SvgWriter.Write(drawing, design + "-" + view, alone: true));
    }

    private static void Within(Spot spot, LineDrawing drawing) =>
        Assert.True(spot.X >= -0.01 && spot.Y >= -0.01 && spot.X <= drawing.Width + 0.01 && spot.Y <= drawing.Height + 0.01, $"{spot} lies outside {drawing.Width} × {drawing.Height}");

    private static Dictionary<string, LineDrawing> Views(Piece piece) => new()
    {
        ["front"] = PieceDrawings.Front(piece, 600, 500), ["side"] = PieceDrawings.Side(piece, 600, 500), ["plan"] = PieceDrawings.Plan(piece, 600, 500),
        ["isometric"] = PieceDrawings.Isometric(piece, 600, 500), ["exploded"] = PieceDrawings.Exploded(piece, 600, 600),
    };

    private static Piece Read(string design)
    {
        var reading = DesignJson.Read(File.ReadAllBytes(Path.Combine(Root, "wwwroot-assets", "designs", design + ".json")));
        return DesignEvaluator.Evaluate(reading.Document!, new Dictionary<string, string>()).Piece!;
    }

    private static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder!.FullName, "ShopPlanner.sln"))) folder = folder.Parent;
            return folder.FullName;
        }
    }
}
