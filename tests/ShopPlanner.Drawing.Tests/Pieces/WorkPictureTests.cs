using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>Pictures of steps of work.</summary>
public sealed class WorkPictureTests
{
    [Fact]
    public void What_a_step_handles_is_outlined_and_marked_and_what_stands_already_is_there()
    {
        var piece = BuiltInPieces.Read("bookcase");
        var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToList();
        var drawing = WorkPicture.Draw(piece, Step([marks[0]], [marks[1], marks[2]]), 360, 260)!;
        var drawn = drawing.Shapes.OfType<Marked>().Select(one => one.Mark).ToHashSet();
        Assert.Equal(marks.Take(3).ToHashSet(), drawn);
        var chalk = drawing
            .Shapes.OfType<Marked>()
            .Where(one => one.Leaves.OfType<Polyline>().Any(IsChalk))
            .Select(one => one.Mark);
        Assert.Equal([marks[0]], chalk.Distinct());
        Assert.Contains($"Working on: {marks[0]}. Already in place: {marks[1]}, {marks[2]}.", drawing.Description);
        Assert.Contains("Glue it", SvgWriter.Write(drawing, "step"), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_stands_the_others_are_drawn_faintly_and_without_marks()
    {
        var piece = BuiltInPieces.Read("bookcase");
        var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToList();
        var drawing = WorkPicture.Draw(piece, Step([marks[0]], []), 360, 260)!;
        var faces = drawing
            .Shapes.OfType<Marked>()
            .SelectMany(one => one.Leaves.OfType<Face>().Select(face => (one.Mark, face)))
            .ToList();
        Assert.Equal(marks.ToHashSet(), faces.Select(one => one.Mark).ToHashSet());
        Assert.All(faces, one => Assert.Equal(one.Mark == marks[0] ? Stroke.Thin : Stroke.Grain, one.face.Edge));
        var lettered = drawing.Leaves().OfType<Caption>().Select(one => one.Words).ToHashSet();
        Assert.Contains(marks[0], lettered);
        Assert.Empty(lettered.Intersect(marks.Skip(1)));
    }

    [Fact]
    public void A_step_that_handles_no_part_of_the_piece_has_no_picture() =>
        Assert.Null(WorkPicture.Draw(BuiltInPieces.Read("bookcase"), Step(["Z99"], []), 360, 260));

    // Two shelves over each other: one is put onto nothing, the other comes from a side.
    [Theory]
    [InlineData(false, 1)]
    [InlineData(true, -1)]
    public void What_moves_in_is_drawn_out_of_its_place_against_its_move(bool forward, int side)
    {
        var piece = BuiltInPieces.Read("bookcase");
        var (still, moved) = Over(piece);
        var step = Step([still, moved], []) with { Moves = [new([still], null, false), new([moved], Axis.X, forward)] };
        var drawing = WorkPicture.Draw(piece, step, 360, 260)!;
        Assert.Equal(side, Math.Sign(Middle(drawing, moved) - Middle(drawing, still)));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_built_in_piece_is_drawn_within_its_room(string name)
    {
        var piece = BuiltInPieces.Read(name);
        var marks = piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).ToList();
        var drawing = WorkPicture.Draw(piece, Step([.. marks.Take(4)], [.. marks.Skip(4)]), 360, 260)!;
        Assert.InRange(drawing.Height, 1, 260.01);
        Assert.Equal(360, drawing.Width, 3);
    }

    public static TheoryData<string> Designs => [.. BuiltInPieces.Names];

    private static (string, string) Over(Piece piece) =>
        piece
            .Parts.SelectMany(part => part.Copies.GroupBy(copy => (copy.Box.X, copy.Box.Y)))
            .Where(same => same.Count() > 1)
            .Select(same => (same.First().Mark, same.Last().Mark))
            .First();

    private static double Middle(LineDrawing drawing, string mark) =>
        drawing
            .Shapes.OfType<Marked>()
            .Where(one => one.Mark == mark)
            .SelectMany(one => one.Leaves.OfType<Face>())
            .SelectMany(face => face.Spots)
            .Average(spot => spot.X);

    private static bool IsChalk(Polyline line) => line.Stroke == Stroke.NextCut;

    private static WorkStep Step(string[] handles, string[] present) =>
        new("join:x", WorkPhase.Assembly, WorkAction.Join, "Glue it", ["Glue it."], [.. handles], [], 10)
        {
            Present = [.. present],
        };
}
