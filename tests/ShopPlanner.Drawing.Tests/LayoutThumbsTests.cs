using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Drawing.Svg;

namespace ShopPlanner.Drawing.Tests;

/// <summary>A plan's boards and sheets drawn small, to be compared.</summary>
public sealed class LayoutThumbsTests
{
    private static readonly ThumbPicture Sheet = new(Samples.Sheet(), IsBoard: false),
        Board = new(Samples.Board(), IsBoard: true),
        Short =
            new(
                Samples.Board() with
                {
                    Length = Samples.In("48"),
                    Pieces = [],
                    Leftovers = [],
                    Cuts = [],
                    Trims = [],
                },
                IsBoard: true
            );

    [Fact]
    public void All_are_drawn_to_one_scale_and_the_longest_fills_the_width()
    {
        var drawn = new LayoutThumbs([Sheet, Board, Short], 200).Draw().Select(Wood).ToList();
        Assert.Equal(198, drawn[0].Width, 6);
        Assert.Equal(drawn[0].Width, drawn[1].Width, 6);
        Assert.Equal(drawn[0].Width / 2, drawn[2].Width, 6);
        Assert.Equal(drawn[0].Width / 2, drawn[0].Height, 6);
    }

    // 2 1/2 in of 96 in 198 units is 5.2: drawn four times as wide, both boards alike.
    [Fact]
    public void Narrow_boards_are_widened_alike_so_that_a_mark_fits()
    {
        var thumbs = new LayoutThumbs([Board, Short, Sheet], 200);
        Assert.Equal(4, thumbs.Stretch);
        var drawn = thumbs.Draw().Select(Wood).ToList();
        Assert.Equal(2.5 * 198 / 96 * 4, drawn[0].Height, 6);
        Assert.Equal(drawn[0].Height, drawn[1].Height, 6);
    }

    [Fact]
    public void A_mark_that_does_not_fit_gives_way_to_its_letters_and_these_to_nothing()
    {
        var board = Samples.Board();
        var named = board with
        {
            Pieces =
            [
                .. board.Pieces.Select(piece => piece with { Mark = $"Workshop {piece.Mark}–C8", Letters = piece.Mark[..1] }),
            ],
        };
        var words = Words(new LayoutThumbs([new(named, IsBoard: true)], 120).Draw()[0]);
        // Rails of 34 1/2 take 43 units; blocks of 1 1/2 less than 2.
        Assert.Equal(["C", "C"], words);
        Assert.Contains("Workshop C1–C8", Words(new LayoutThumbs([new(named, IsBoard: true)], 900).Draw()[0]));
    }

    [Fact]
    public void Nothing_is_written_smaller_than_can_be_read_and_nothing_leaves_the_drawing()
    {
        foreach (var width in new[] { 158.0, 208.0 })
        foreach (var drawing in new LayoutThumbs([Sheet, Board, Short], width).Draw())
        {
            Assert.All(drawing.Primitives().OfType<Caption>(), caption => Assert.InRange(caption.Size, 8, 12));
            Assert.All(
                new SvgText(SvgWriter.Write(drawing, "t")).Everything,
                box => Assert.True(box.Right <= drawing.Width + 0.01 && box.Bottom <= drawing.Height + 0.01, $"{box}")
            );
        }
    }

    [Fact]
    public void A_turned_piece_carries_the_arrow() => Assert.Contains("G1 ↔", Words(new LayoutThumbs([Sheet], 208).Draw()[0]));

    private static Box Wood(LineDrawing drawing) =>
        drawing.Primitives().OfType<Patch>().First(patch => patch.Fill == Fill.Wood).Box;

    private static List<string> Words(LineDrawing drawing) =>
        [.. drawing.Primitives().OfType<Caption>().Select(caption => caption.Words)];
}
