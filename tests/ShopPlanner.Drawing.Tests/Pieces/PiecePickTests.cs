using System.Xml.Linq;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>What is hit where a drawing is pressed, and where the keyboard stops.</summary>
public sealed class PiecePickTests
{
    public static TheoryData<string> Designs => [.. BuiltInPieces.Names];

    [Theory, MemberData(nameof(Designs))]
    public void Every_bay_and_every_kind_that_is_seen_is_one_stop_of_the_keyboard(string design)
    {
        var piece = BuiltInPieces.Read(design);
        var picks = Picks(piece);
        foreach (
            var drawing in new[] { Front(piece, picks), PieceDrawings.Isometric(piece, DrawingRoom.PieceOnPhone, null, picks) }
        )
        {
            var stops = drawing.Shapes.OfType<Marked>().Where(one => one.Name is not null).ToList();
            Assert.Equal(picks.Bays.Keys.Order(), stops.Where(one => one.IsBay).Select(one => one.Mark).Order());
            var kinds = stops.Where(one => !one.IsBay).Select(one => one.Name!.Split(',')[0]).ToList();
            Assert.NotEmpty(kinds);
            Assert.Equal(kinds.Count, kinds.Distinct().Count());
            Assert.Subset(piece.Parts.Select(part => part.Id).ToHashSet(), kinds.ToHashSet());
        }
    }

    [Fact]
    public void The_middle_of_a_bay_is_the_bays_and_a_shelf_is_hit_beside_its_wood_too()
    {
        var piece = BuiltInPieces.Read("bookcase");
        var drawing = Front(piece, Picks(piece));
        var shelf = drawing.Shapes.OfType<Marked>().First(one => one.Name?.EndsWith(", Shelf", StringComparison.Ordinal) == true);
        var box = piece.Parts.SelectMany(part => part.Copies).Single(copy => copy.Mark == shelf.Mark).Box;
        var bay = piece.Openings.Where(one => one.Box.Shared(box) is not null).MaxBy(one => one.Path.Length)!.Path;
        var wood = shelf.Shapes.OfType<Patch>().Single().Box;
        Assert.Equal(shelf.Mark, Hit(drawing, wood.Centre));
        Assert.Equal(shelf.Mark, Hit(drawing, wood.Centre with { Y = wood.Y - 8 }));
        Assert.Equal(bay, Hit(drawing, wood.Centre with { Y = wood.Y - 30 }));
        Assert.Equal(bay, Hit(drawing, wood.Centre with { Y = wood.Bottom + 30 }));
    }

    [Fact]
    public void A_door_is_hit_before_the_bay_behind_it()
    {
        var piece = BuiltInPieces.Read("pantry-cupboard");
        var drawing = Front(piece, Picks(piece));
        var panel = piece.Parts.Single(part => part.Name == "Door panel").Copies[0].Mark;
        var wood = drawing.Shapes.OfType<Marked>().First(one => one.Mark == panel).Shapes.OfType<Patch>().First().Box;
        Assert.Contains(drawing.Shapes.OfType<Marked>(), one => one.IsBay);
        Assert.Equal(panel, Hit(drawing, new(wood.X + 6, wood.Y + 6)));
    }

    [Fact]
    public void What_is_chosen_says_so()
    {
        var piece = BuiltInPieces.Read("bookcase");
        var drawing = Front(piece, Picks(piece) with { Part = "A", Bay = "bays.bays.1" });
        Assert.Equal(
            ["A", "bays.bays.1"],
            drawing
                .Shapes.OfType<Marked>()
                .Where(one => one.IsChosen)
                .Select(one => one.IsBay ? one.Mark : one.Name!.Split(',')[0])
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_drawing_that_is_only_looked_at_is_one_picture()
    {
        var piece = BuiltInPieces.Read("bookcase");
        XElement Root(PiecePicks? picks) => XDocument.Parse(SvgWriter.Write(Front(piece, picks), "t")).Root!;
        Assert.Equal("img", Root(null).Attribute("role")!.Value);
        Assert.DoesNotContain(Root(null).Descendants(), one => one.Attribute("tabindex") is not null);
        Assert.Equal("group", Root(Picks(piece)).Attribute("role")!.Value);
        var bay = Root(Picks(piece)).Descendants().First(one => one.Attribute("data-bay")?.Value == "bays.bays.0");
        Assert.Equal(
            ("button", "0", "Bay bays.bays.0", "false"),
            (
                bay.Attribute("role")!.Value,
                bay.Attribute("tabindex")!.Value,
                bay.Attribute("aria-label")!.Value,
                bay.Attribute("aria-pressed")!.Value
            )
        );
    }

    private static LineDrawing Front(Piece piece, PiecePicks? picks) =>
        PieceDrawings.Front(piece, DrawingRoom.PieceOnPhone, null, picks);

    private static PiecePicks Picks(Piece piece) =>
        new(
            null,
            null,
            piece
                .Openings.Where(one =>
                    !piece.Openings.Any(other => other.Path.StartsWith(one.Path + ".", StringComparison.Ordinal))
                )
                .ToDictionary(one => one.Path, one => "Bay " + one.Path)
        );

    // The last that was drawn and has something to hit there.
    private static string? Hit(LineDrawing drawing, Spot spot) =>
        drawing
            .Shapes.OfType<Marked>()
            .LastOrDefault(one => one.Leaves.OfType<Patch>().Any(patch => patch.Box.Holds(spot)))
            ?.Mark;
}
