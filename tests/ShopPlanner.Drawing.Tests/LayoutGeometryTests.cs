using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests;

public sealed class LayoutGeometryTests
{
    private static readonly DrawingRoom[] Rooms = [DrawingRoom.Phone, DrawingRoom.Screen, DrawingRoom.Paper(526, 300)];

    public static TheoryData<int> EveryRoom => [0, 1, 2];

    [Theory]
    [MemberData(nameof(EveryRoom))]
    public void Board_is_drawn_to_scale_and_legible(int room)
    {
        var svg = Read(LayoutDrawing.Board(Samples.Board(), Rooms[room]));
        CheckScale(Samples.Board(), svg);
        CheckLegible(svg);
    }

    [Theory]
    [MemberData(nameof(EveryRoom))]
    public void Sheet_is_drawn_to_scale_and_legible(int room)
    {
        var svg = Read(LayoutDrawing.Sheet(Samples.Sheet(), Rooms[room]));
        CheckScale(Samples.Sheet(), svg);
        CheckLegible(svg);
        var wood = svg.Rectangles("wood")[0];
        Assert.Equal(2, wood.Width / wood.Height, 2);
    }

    [Fact]
    public void Paper_scale_is_a_whole_number_and_true()
    {
        var svg = Read(LayoutDrawing.Sheet(Samples.Sheet(), DrawingRoom.Paper(526, 400)));
        Assert.Contains(svg.Texts, t => t.Words == "scale 1 : 14, in inches");
        Assert.Equal(96.0 * 72 / 14, svg.Rectangles("wood")[0].Width, 0.02);
    }

    [Fact]
    public void Kerf_is_as_wide_as_it_is()
    {
        var svg = Read(LayoutDrawing.Board(Samples.Board(), DrawingRoom.Screen));
        var perInch = svg.Rectangles("wood")[0].Width / 96;
        Assert.All(svg.Rectangles("kerf"), kerf => Assert.Equal(perInch / 8, kerf.Width, 0.011));
    }

    [Fact]
    public void Narrow_board_says_how_much_wider_it_is_drawn()
    {
        var svg = Read(LayoutDrawing.Board(Samples.Board(), DrawingRoom.Phone));
        var wood = svg.Rectangles("wood")[0];
        var stretch = (int)Math.Round(wood.Height / (wood.Width / 96 * 2.5));
        Assert.InRange(stretch, 2, 10);
        Assert.Contains(svg.Texts, t => t.Words.Contains($"widths drawn ×{stretch}, lengths to scale", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_mark_and_every_size_can_be_read_somewhere()
    {
        var texts = Read(LayoutDrawing.Sheet(Samples.Sheet(), DrawingRoom.Phone)).Texts.Select(t => t.Words).ToList();
        string[] wanted = ["A1", "A2", "B1", "B2", "B3", "G1", "E1–E6: 60 × ¾", "F1–F4: 1 ½ × 1 ½", "30 × 15 ½", "13 × 40"];
        Assert.All(wanted, word => Assert.Contains(texts, t => t.Contains(word, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(true, "↔ turned: the grain runs across the part")]
    [InlineData(false, "↔ turned: the part lies across the sheet")]
    public void A_turned_piece_says_so_by_an_arrow_and_in_words(bool hasGrain, string note)
    {
        foreach (var room in Rooms)
        {
            var texts = Read(LayoutDrawing.Sheet(Samples.Sheet() with { HasGrain = hasGrain }, room)).Texts;
            Assert.Contains(texts, t => t.Words == "G1 ↔");
            Assert.Contains(texts, t => t.Words == note);
            Assert.DoesNotContain(texts, t => t.Words.StartsWith("A1 ↔", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Without_a_turned_piece_nothing_is_said_of_it()
    {
        var sheet = Samples.Sheet();
        var straight = sheet with { Pieces = [.. sheet.Pieces.Select(p => p with { Turned = false })] };
        var drawing = LayoutDrawing.Sheet(straight, DrawingRoom.Screen);
        Assert.DoesNotContain(Read(drawing).Texts, t => t.Words.Contains("turned", StringComparison.Ordinal));
        Assert.DoesNotContain("turned", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("13 × 40, turned", LayoutDrawing.Sheet(sheet, DrawingRoom.Screen).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Next_cut_is_a_chalk_line_and_a_cut_piece_is_ticked()
    {
        var board = Samples.Board();
        var done = board with { Pieces = [.. board.Pieces.Select(p => p with { Done = p.Mark == "C1" })] };
        var svg = Read(LayoutDrawing.Board(done, DrawingRoom.Screen));
        Assert.Equal((1, 1), (svg.Count("path", "next-cut"), svg.Count("rect", "cut")));
        Assert.Contains(svg.Texts, t => t.Words == "C1 ✓");
    }

    [Fact]
    public void Any_board_is_legible() =>
        Gen.Select(Gen.Int[1, 400].List[1, 24], Gen.Int[0, 2], Gen.Bool)
            .Sample(
                (eighths, room, keep) =>
                {
                    var (pieces, used) = (new List<(string, string, string)>(), 4);
                    foreach (var length in eighths.TakeWhile(e => (used += e + 1) < 8 * 96))
                        pieces.Add(($"{(char)('A' + (length % 5))}{pieces.Count}", "Part", $"{length}/8"));
                    CheckLegible(Read(LayoutDrawing.Board(Samples.BoardOf([.. pieces], keep), Rooms[room])));
                },
                iter: 150
            );

    [Fact]
    public void Any_sheet_is_legible() =>
        Gen.Select(Gen.Int[1, 40].List[1, 12], Gen.Int[2, 60].List[1, 12], Gen.Int[0, 2])
            .Sample(
                (widths, heights, room) => CheckLegible(Read(LayoutDrawing.Sheet(Grid(widths, heights), Rooms[room]))),
                iter: 100
            );

    [Fact]
    public void Long_marks_and_names_stay_in_the_picture()
    {
        var board = Samples.Board();
        var name = string.Concat(Enumerable.Repeat("W🪚ש ", 1000));
        var named = board with
        {
            Title = name,
            Pieces = [.. board.Pieces.Select(p => p with { Name = name, Mark = name })],
            Leftovers = [.. board.Leftovers.Select(l => l with { Tag = name })],
        };
        foreach (var room in Rooms)
            CheckLegible(Read(LayoutDrawing.Board(named, room)));
    }

    private static void CheckScale(LayoutPicture picture, SvgText svg)
    {
        var wood = svg.Rectangles("wood")[0];
        var perTick = wood.Width / picture.Length.Ticks;
        var drawn = svg.Rectangles("thin").Take(picture.Pieces.Length).ToList();
        Assert.All(
            picture.Pieces.Zip(drawn),
            pair =>
            {
                Assert.Equal(pair.First.Area.Dx.Ticks * perTick, pair.Second.Width, 0.021);
                Assert.Equal(pair.First.Area.X.Ticks * perTick, pair.Second.X - wood.X, 0.021);
            }
        );
    }

    private static void CheckLegible(SvgText svg)
    {
        Assert.All(
            svg.Everything,
            box =>
            {
                Assert.InRange(box.X, -0.01, svg.Page.Width);
                Assert.InRange(box.Y, -0.01, svg.Page.Height);
                Assert.InRange(box.Right, 0, svg.Page.Width + 0.01);
                Assert.InRange(box.Bottom, 0, svg.Page.Height + 0.01);
            }
        );
        var texts = svg.Texts;
        for (var i = 0; i < texts.Count; i++)
        for (var j = 0; j < i; j++)
            Assert.False(texts[i].Box.Overlaps(texts[j].Box), $"'{texts[i].Words}' covers '{texts[j].Words}'");
    }

    private static LayoutPicture Grid(List<int> widths, List<int> heights)
    {
        var pieces = ImmutableArray.CreateBuilder<PiecePicture>();
        var cuts = ImmutableArray.CreateBuilder<CutPicture>();
        var x = 0;
        foreach (var width in widths.TakeWhile(w => x + w <= 96))
        {
            var y = 0;
            foreach (var half in heights.TakeWhile(h => y + h <= 96))
            {
                pieces.Add(
                    new(
                        $"{(char)('A' + (half % 7))}{pieces.Count}",
                        "Part of it",
                        Area(x, y / 2m, width - 0.125m, (half / 2m) - 0.125m),
                        false
                    )
                );
                cuts.Add(new(cuts.Count + 1, Area(x, (y + half) / 2m - 0.125m, width - 0.125m, 0.125m)));
                y += half;
            }

            x += width;
        }

        return new(
            "Sheet",
            LengthUnit.Inch,
            Length.FromInches(96),
            Length.FromInches(48),
            null,
            "#F2E6CE",
            true,
            pieces.ToImmutable(),
            [new(Area(0, 47, 90, 1), true, "B1")],
            [],
            cuts.ToImmutable()
        );
    }

    private static StockArea Area(decimal x, decimal y, decimal dx, decimal dy) =>
        new(Length.FromInches(x), Length.FromInches(y), Length.FromInches(dx), Length.FromInches(dy));

    private static SvgText Read(LineDrawing drawing) => new(SvgWriter.Write(drawing, "d"));
}
