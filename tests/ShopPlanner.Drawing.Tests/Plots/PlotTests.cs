using ShopPlanner.Drawing.Plots;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Tests.Plots;

/// <summary>Plots of the shop's book: to scale from zero, every letter on the page, told apart without color.</summary>
public sealed class PlotTests
{
    private static readonly Bar[] Bars =
    [
        new("May 2026", 40, "$40.00"),
        new("A project with a name that is far too long for the line above its bar, and then some", 10, "$10.00"),
        new("July 2026", 0, "$0.00"),
    ];

    [Theory]
    [InlineData(320)]
    [InlineData(640)]
    public void Bars_are_to_one_scale_and_stay_on_the_page(double width)
    {
        var plot = BarPlot.Draw("Spent", Bars, BarFill.Plain, width);
        var boxes = plot.Leaves().OfType<Frame>().Select(frame => frame.Box).ToList();
        Assert.Equal(2, boxes.Count);
        Assert.Equal(4, boxes[0].Width / boxes[1].Width, 9);
        Assert.All(plot.Leaves().OfType<Caption>(), caption => Assert.InRange(caption.Extent.Right, 0, width));
        Assert.All(Bars, bar => Assert.Contains(bar.Figure, plot.Description));
    }

    [Fact]
    public void Waste_is_hatched_and_what_is_kept_has_a_dotted_edge()
    {
        var waste = BarPlot.Draw("Waste", Bars, BarFill.Hatched, 320);
        var kept = BarPlot.Draw("Kept", Bars, BarFill.Dotted, 320);
        Assert.Contains(waste.Leaves().OfType<Line>(), line => line.Stroke == Stroke.Waste);
        Assert.DoesNotContain(waste.Leaves(), shape => shape is Patch);
        Assert.All(kept.Leaves().OfType<Frame>(), frame => Assert.Equal(Stroke.Keep, frame.Stroke));
    }

    // 10 days and 5.00 to 10.00 on a scale from zero: the first dot lies half as high as the second.
    [Fact]
    public void Steps_keep_a_value_until_the_next_is_known()
    {
        PlotLine[] lines =
        [
            new("North", [new(0, 5, "$5.00", true), new(10, 10, "$10.00", false)]),
            new("South", [new(5, 7.5, "$7.50", true)]),
        ];
        var plot = StepPlot.Draw("Pine", lines, ("May 1", "May 11"), 320);
        var steps = plot.Leaves().OfType<Polyline>().ToList();
        Assert.Equal([Stroke.Outline, Stroke.Hidden], steps.Select(step => step.Stroke));
        var north = steps[0].Spots;
        Assert.Equal(north[0].Y, north[1].Y);
        Assert.Equal(north[1].X, north[2].X);
        var bottom = plot.Leaves().OfType<Line>().Where(line => line.Stroke == Stroke.Thin).Max(line => line.To.Y);
        Assert.Equal(2, (bottom - north[2].Y) / (bottom - north[0].Y), 9);
        Assert.All(plot.Leaves().OfType<Caption>(), caption => Assert.InRange(caption.Extent.Right, 0, 320));
        Assert.Contains("North: $5.00, $10.00; South: $7.50.", plot.Description);
    }
}
