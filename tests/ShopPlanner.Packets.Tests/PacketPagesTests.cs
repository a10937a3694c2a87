using System.Collections.Immutable;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Model;
using static ShopPlanner.Packets.Tests.PrintedPages;

namespace ShopPlanner.Packets.Tests;

/// <summary>Looks at the pages before they become a file: what stands where.</summary>
public sealed class PacketPagesTests
{
    public static TheoryData<string> Samples =>
        [
            "letter",
            "a4",
            "many",
            "hostile",
            "word",
            "empty",
            "millimetres",
            "pieces",
            "pieces-a4",
            "work",
            "work-a4",
            "unplanned",
        ];

    /// <summary>The margin asked for is 1/4 in at least (common practice of home printers).</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Nothing_comes_near_the_edge_of_the_paper(string sample) =>
        Assert.All(
            Pages(sample),
            page =>
                Assert.All(
                    page.Drawing.Leaves().Select(Extent),
                    box =>
                    {
                        Assert.InRange(box.X, 18, page.Drawing.Width);
                        Assert.InRange(box.Y, 18, page.Drawing.Height);
                        Assert.InRange(box.Right, 0, page.Drawing.Width - 18);
                        Assert.InRange(box.Bottom, 0, page.Drawing.Height - 18);
                    }
                )
        );

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_text_covers_another(string sample)
    {
        foreach (var page in Pages(sample))
        {
            var texts = page.Drawing.Leaves().OfType<Caption>().Where(c => c.Words.Length > 0).OrderBy(c => Inked(c).Y).ToList();
            for (var i = 0; i < texts.Count; i++)
            for (var j = i + 1; j < texts.Count && Inked(texts[j]).Y < Inked(texts[i]).Bottom; j++)
                Assert.False(Inked(texts[i]).Overlaps(Inked(texts[j])), $"'{texts[i].Words}' covers '{texts[j].Words}'");
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_page_says_which_it_is_and_of_which_plan(string sample)
    {
        var pages = Pages(sample);
        var plan = sample == "unplanned" ? "no cut plan" : "plan 3 · 8f3a12bc";
        for (var i = 0; i < pages.Length; i++)
        {
            Assert.Contains($"page {i + 1} of {pages.Length}", Words(pages[i]));
            Assert.Contains(plan + " · printed Nov 25, 2026", Words(pages[i]));
        }
    }

    [Fact]
    public void Bar_is_as_long_as_it_says()
    {
        Assert.Equal(4 * 72, BarOn(PacketSamples.Cabinet(), "4 in on paper"), 6);
        Assert.Equal(100 / 25.4 * 72, BarOn(PacketSamples.Metric(), "100 mm on paper"), 6);
    }

    [Fact]
    public void Bar_stands_once_on_each_page_with_a_layout() =>
        Assert.All(
            Pages("many").Where(page => Words(page).Any(word => word.Contains("scale 1 : ", StringComparison.Ordinal))),
            page => Assert.Single(Words(page), word => word.StartsWith("4 in on paper", StringComparison.Ordinal))
        );

    [Fact]
    public void Sheet_is_printed_at_the_scale_that_stands_below_it()
    {
        var model = PacketSamples.Cabinet();
        model = model with { Layouts = [model.Layouts[0]], Sections = [PacketSection.Layouts] };
        var page = PacketWriter.Pages(model).Single();
        var scale = ScaleOn(Words(page));
        var wood = page.Drawing.Leaves().OfType<Patch>().First(p => p.Fill == Fill.Wood);
        Assert.Equal(96.0 * 72 / scale, wood.Box.Width, 6);
        Assert.Equal(48.0 * 72 / scale, wood.Box.Height, 6);
    }

    [Fact]
    public void Boards_share_one_scale()
    {
        var model = PacketSamples.Cabinet();
        model = model with { Layouts = [.. model.Layouts.Where(one => one.IsBoard)], Sections = [PacketSection.Layouts] };
        var words = PacketWriter.Pages(model).SelectMany(Words).Where(w => w.StartsWith("scale 1 : ", StringComparison.Ordinal));
        Assert.Equal(2, words.Count());
        Assert.Single(words.Distinct());
    }

    [Fact]
    public void Head_of_a_table_is_repeated_and_no_row_is_lost()
    {
        var model = PacketSamples.Cabinet() with
        {
            Parts =
            [
                .. Enumerable
                    .Range(1, 120)
                    .Select(i => PacketSamples.Cabinet().Parts[0] with { Marks = [$"Q{i}"], Name = $"Panel number {i}" }),
            ],
        };
        var pages = PacketWriter
            .Pages(model)
            .Where(p => Words(p).Any(w => w.StartsWith("Panel number", StringComparison.Ordinal)))
            .ToList();
        Assert.True(pages.Count > 2);
        Assert.All(pages, p => Assert.Contains("Thick", Words(p)));
        Assert.Equal(
            Enumerable.Range(1, 120).Select(i => $"Panel number {i}"),
            pages.SelectMany(Words).Where(w => w.StartsWith("Panel number", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Views_of_a_piece_are_as_large_as_their_scale_says()
    {
        var pieces = PacketSamples.WithPieces(PaperSize.Letter);
        var bookcase = pieces with
        {
            Pieces = [pieces.Pieces.Single(one => one.Name == "Bookcase")],
            Sections = [PacketSection.Drawings],
        };
        var page = PacketWriter.Pages(bookcase).First(p => Words(p).Contains("Front, right side and top"));
        var scale = ScaleOn(Words(page));
        // The widest is the back: between sides of 23/32 in, in whose rabbets its edges are hidden.
        var back = page.Drawing.Leaves().OfType<Patch>().Where(p => p.Fill == Fill.Wood).MaxBy(p => p.Box.Width)!;
        Assert.Equal((30 - (2 * 23 / 32.0)) * 72.0 / scale, back.Box.Width, 3);
    }

    private static int ScaleOn(List<string> words) =>
        int.Parse(
            words.First(w => w.StartsWith("scale 1 : ", StringComparison.Ordinal)).Split(' ', ',')[3],
            System.Globalization.CultureInfo.InvariantCulture
        );

    private static double BarOn(PacketModel model, string words)
    {
        var page = PacketWriter.Pages(model).First(p => Words(p).Any(w => w.StartsWith(words, StringComparison.Ordinal)));
        var y = page.Drawing.Leaves().OfType<Caption>().First(c => c.Words.StartsWith(words, StringComparison.Ordinal)).At.Y;
        var bar = page.Drawing.Leaves().OfType<Line>().Single(l => l.Stroke == Stroke.Outline && l.From.Y == y && l.To.Y == y);
        return bar.To.X - bar.From.X;
    }

    // From the top of a figure to a little under the base line, as far as ink goes.
    private static Box Inked(Caption caption)
    {
        var (box, up, down) = (caption.Extent, caption.Drop, caption.Drop + (caption.Size * 0.15));
        return caption.Upward
            ? box with
            {
                X = caption.At.X - up,
                Width = up + down,
            }
            : box with
            {
                Y = caption.At.Y - up,
                Height = up + down,
            };
    }

    private static Box Around(ImmutableArray<Spot> spots)
    {
        var (x, y) = (spots.Min(s => s.X), spots.Min(s => s.Y));
        return new(x, y, spots.Max(s => s.X) - x, spots.Max(s => s.Y) - y);
    }

    private static Box Extent(Shape shape) =>
        shape switch
        {
            Caption caption => caption.Words.Length == 0 ? new(100, 100, 0, 0) : Inked(caption),
            Frame frame => frame.Box,
            Patch patch => patch.Box,
            Line line => new(
                Math.Min(line.From.X, line.To.X),
                Math.Min(line.From.Y, line.To.Y),
                Math.Abs(line.From.X - line.To.X),
                Math.Abs(line.From.Y - line.To.Y)
            ),
            Polyline polyline => Around(polyline.Spots),
            Face face => Around(face.Spots),
            _ => throw new ArgumentException("an unknown shape", nameof(shape)),
        };
}
