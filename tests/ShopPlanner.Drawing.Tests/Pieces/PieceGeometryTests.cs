using System.Collections.Concurrent;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;
using Box = ShopPlanner.Drawing.Shapes.Box;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>What is measured on the drawings of every built-in design, as it stands and at values within its limits.</summary>
public sealed class PieceGeometryTests
{
    private const int Trials = 6;

    /// <summary>How wide a drawing is on a phone of 390 px, in CSS pixels: less the margins of page and frame.</summary>
    private const double OnPhone = 348,
        Phone = 390;

    public static TheoryData<string> Designs => [.. BuiltInPieces.Names];

    [Theory, MemberData(nameof(Designs))]
    public void No_text_covers_another_and_all_lies_on_the_page(string design) =>
        Each(
            design,
            (name, drawing) =>
            {
                var words = drawing.Leaves().OfType<Caption>().ToList();
                for (var i = 0; i < words.Count; i++)
                for (var k = i + 1; k < words.Count; k++)
                    Assert.False(
                        Core(words[i]).Overlaps(Core(words[k])),
                        $"{name}: '{words[i].Words}' covers '{words[k].Words}'"
                    );
                foreach (var box in drawing.Leaves().Select(PieceDrawingTests.Extent))
                    Assert.True(
                        box is { X: >= -0.01, Y: >= -0.01 }
                            && box.Right <= drawing.Width + 0.01
                            && box.Bottom <= drawing.Height + 0.01,
                        $"{name}: {box} lies outside {drawing.Width} × {drawing.Height}"
                    );
            }
        );

    [Theory, MemberData(nameof(Designs))]
    public void No_leader_crosses_another_or_a_text(string design) =>
        Each(
            design,
            (name, drawing) =>
            {
                var leaders = drawing.Leaves().OfType<Polyline>().Where(one => one.Stroke == Stroke.Leader).ToList();
                var words = drawing.Leaves().OfType<Caption>().ToList();
                for (var i = 0; i < leaders.Count; i++)
                {
                    for (var k = i + 1; k < leaders.Count; k++)
                        Assert.False(Cross(leaders[i], leaders[k]), $"{name}: leaders {i} and {k} cross");
                    Assert.All(
                        words,
                        word =>
                            Assert.False(
                                Segments(leaders[i]).Any(one => Crosses(one, Core(word))),
                                $"{name}: a leader crosses '{word.Words}'"
                            )
                    );
                }
            }
        );

    [Theory, MemberData(nameof(Designs))]
    public void Every_chain_adds_up_to_the_outside_size(string design)
    {
        var unit = BuiltInPieces.Read(design).Unit;
        Each(
            design,
            (name, drawing) =>
            {
                var rows = Rows(drawing);
                foreach (var row in rows)
                {
                    var whole = Outermost(rows, row);
                    Assert.True(
                        row.Sum(one => Ticks(one, unit)) == Ticks(whole, unit),
                        $"{name}: {string.Join(" + ", row.Select(one => one.Words))} is not {whole.Words}"
                    );
                }
            }
        );
    }

    [Theory, MemberData(nameof(Designs))]
    public void On_a_phone_every_text_is_at_least_11_px_high(string design)
    {
        Each(
            design,
            (name, drawing) =>
            {
                if (!name.Contains(", phone", StringComparison.Ordinal))
                    return;
                // One unit of these drawings is one CSS pixel.
                Assert.True(drawing.Width is OnPhone or Phone, name);
                Assert.All(
                    drawing.Leaves().OfType<Caption>(),
                    word => Assert.True(word.Size >= 11, $"{name}: '{word.Words}' is {word.Size} high")
                );
            }
        );
    }

    [Theory, MemberData(nameof(Designs))]
    public void Figures_stand_above_or_left_of_their_lines(string design) =>
        Each(
            design,
            (name, drawing) =>
                Assert.All(
                    drawing.Shapes.OfType<Dimension>().Where(one => one.Leader.IsEmpty),
                    one =>
                    {
                        var at = one.Parts.OfType<Caption>().Single().At;
                        Assert.True((one.Run == Run.Across ? at.Y : at.X) < one.At, $"{name}: {one.Words}");
                    }
                )
        );

    [Theory, MemberData(nameof(Designs))]
    public void Every_flat_view_names_its_side_and_its_unit(string design) =>
        Each(
            design,
            (name, drawing) =>
            {
                var words = drawing.Leaves().OfType<Caption>().Select(one => one.Words).ToList();
                if (drawing.Title.StartsWith("Exploded", StringComparison.Ordinal))
                    return;
                Assert.Contains(words, one => one.StartsWith(drawing.Title, StringComparison.Ordinal));
                Assert.Contains(
                    words,
                    one =>
                        one.Contains("in inches", StringComparison.Ordinal)
                        || one.Contains("in millimeters", StringComparison.Ordinal)
                );
            }
        );

    // Drawn once for all tests.
    private static readonly ConcurrentDictionary<string, List<(string Name, LineDrawing Drawing)>> Drawn = new();

    private static void Each(string design, Action<string, LineDrawing> look)
    {
        foreach (var (name, drawing) in Drawn.GetOrAdd(design, DrawAll))
            look(name, drawing);
    }

    private static List<(string, LineDrawing)> DrawAll(string design) =>
        [
            .. from varied in VariedPieces.Of(design, Trials)
            from room in Rooms
            from view in Views(varied.Piece, room.Value)
            select ($"{design}, {varied.Values}, {view.View}, {room.Key}", view.Drawing),
        ];

    private static readonly Dictionary<string, DrawingRoom> Rooms = new()
    {
        ["phone"] = DrawingRoom.PieceOnPhone,
        ["screen"] = DrawingRoom.PieceOnScreen,
        ["phone, filled"] = DrawingRoom.PieceFillsPhone,
        ["paper"] = DrawingRoom.Paper(526, 420),
    };

    private static IEnumerable<(string View, LineDrawing Drawing)> Views(Piece piece, DrawingRoom room)
    {
        yield return ("front", PieceDrawings.Front(piece, room));
        yield return ("side", PieceDrawings.Side(piece, room));
        yield return ("plan", PieceDrawings.Plan(piece, room));
        yield return ("exploded", PieceDrawings.Exploded(piece, room));
        if (room.WholeScale)
            yield return ("three", PieceDrawings.ThreeViews(piece, room));
    }

    // Links that follow each other on one line.
    private static List<List<Dimension>> Rows(LineDrawing drawing)
    {
        var rows = new List<List<Dimension>>();
        foreach (var one in drawing.Shapes.OfType<Dimension>().OrderBy(one => (one.Run, one.At, one.From)))
            if (rows.Count > 0 && rows[^1][^1] is var last && Follows(one, last))
                rows[^1].Add(one);
            else
                rows.Add([one]);
        return rows;
    }

    private static bool Follows(Dimension one, Dimension before) =>
        one.Run == before.Run && one.At == before.At && Math.Abs(one.From - before.To) < 0.01;

    // The outside size lies beyond the chains that begin and end where it does.
    private static Dimension Outermost(List<List<Dimension>> rows, List<Dimension> row) =>
        rows.Where(other =>
                other[0].Run == row[0].Run
                && Math.Abs(other[0].From - row[0].From) < 0.01
                && Math.Abs(other[^1].To - row[^1].To) < 0.01
            )
            .MaxBy(other => other[0].Run == Run.Across ? other[0].At : -other[0].At)!
            .Single();

    private static long Ticks(Dimension dimension, LengthUnit unit)
    {
        var parsed = LengthText.Parse(dimension.Words, unit);
        Assert.True(parsed.Ok, $"'{dimension.Words}' is no length");
        return parsed.Value.Ticks;
    }

    private static Box Core(Caption caption) => caption.Extent.Inset(0.6);

    private static IEnumerable<(Spot From, Spot To)> Segments(Polyline line) =>
        line.Spots.Zip(line.Spots.Skip(1)).Where(one => one.First != one.Second);

    private static bool Cross(Polyline one, Polyline other) =>
        Segments(one).Any(a => Segments(other).Any(b => Cross(a.From, a.To, b.From, b.To)));

    private static bool Crosses((Spot From, Spot To) segment, Box box) =>
        box.Holds(segment.From)
        || box.Holds(segment.To)
        || Cross(segment.From, segment.To, new(box.X, box.Y), new(box.Right, box.Bottom))
        || Cross(segment.From, segment.To, new(box.Right, box.Y), new(box.X, box.Bottom));

    private static bool Cross(Spot a, Spot b, Spot c, Spot d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    private static double Side(Spot a, Spot b, Spot c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
