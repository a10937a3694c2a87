using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>Doors that follow the opening as it was measured.</summary>
public sealed class DoorFittingTests
{
    private const string Inset =
        """{ "kind": "doors", "material": "stile", "panel": "thin", "leaves": "LEAVES", "fit": "inset", "gap": "3/32 in" }""";

    private const string Overlay =
        """{ "kind": "doors", "material": "stile", "panel": "thin", "leaves": "LEAVES", "fit": "overlay", "overlay": "1/2 in", "gap": "1/8 in" }""";

    // A trade forum on inset doors: a single door is the opening less 3/16 in, a pair the opening less 9/32 in, three gaps of
    // 3/32 in.
    [Theory]
    [InlineData(1, "3/16")]
    [InlineData(2, "9/32")]
    public void An_inset_door_leaves_its_gaps_in_the_opening_as_it_came_out(int leaves, string gaps)
    {
        var opening = Single(Inset, leaves);
        Assert.Equal(leaves, opening.Marks.Length);
        foreach (var off in new[] { -0.25m, -0.0625m, 0m })
        {
            var measured = new MeasuredOpening(opening.Width + Made.Inches(off), opening.Height + Made.Inches(off / 2));
            var fit = DoorFitting.Fit(opening, measured, LengthUnit.Inch);
            Assert.Empty(fit.Faults);
            var left = measured.Width - (fit.Trim!.Width.Value * leaves) - LengthText.Parse(gaps, LengthUnit.Inch).Value;
            Assert.InRange(left.Ticks, 0, leaves);
            Assert.Equal(measured.Height - Made.Inches(0.1875m), fit.Trim.Height.Value);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void An_overlay_door_covers_as_much_as_designed(int leaves)
    {
        var opening = Single(Overlay, leaves);
        var measured = new MeasuredOpening(opening.Width - Made.Inches(0.125m), opening.Height);
        var trim = DoorFitting.Fit(opening, measured, LengthUnit.Inch).Trim!;
        var over = (trim.Width.Value * leaves) + (Made.Inches(0.125m) * (leaves - 1)) - measured.Width;
        Assert.InRange(over.Ticks, Made.Inches(1).Ticks - 2, Made.Inches(1).Ticks);
        Assert.Equal(opening.Height + Made.Inches(1), trim.Height.Value);
    }

    [Fact]
    public void A_stile_that_was_cut_long_lets_the_door_grow()
    {
        var opening = Single(Inset, 1);
        Assert.Equal(Made.Inches(0.5m), opening.HighestLeaf - opening.LeafHeight);
        var higher = new MeasuredOpening(opening.Width, opening.Height + Made.Inches(0.5m));
        Assert.Empty(DoorFitting.Fit(opening, higher, LengthUnit.Inch).Faults);
    }

    // What the fault says would be right is right.
    [Theory]
    [InlineData(0.0625, 0, "width", "is more than")]
    [InlineData(0, 0.5625, "height", "is more than")]
    [InlineData(-0.75, 0, "width", "is less than")]
    [InlineData(0, -3, "height", "is less than")]
    public void What_no_door_fits_is_refused_with_what_would_do(double wider, double higher, string field, string says)
    {
        var opening = Single(Inset, 1);
        var measured = new MeasuredOpening(
            opening.Width + Made.Inches((decimal)wider),
            opening.Height + Made.Inches((decimal)higher)
        );
        var fit = DoorFitting.Fit(opening, measured, LengthUnit.Inch);
        Assert.Null(fit.Trim);
        var fault = Assert.Single(fit.Faults);
        Assert.Equal(field, fault.Field);
        Assert.StartsWith(says, fault.Message, StringComparison.Ordinal);
    }

    private static DoorOpening Single(string fill, int leaves) =>
        Assert.Single(
            DoorFitting.Openings(
                Made.Piece(Made.Carcass("24 in", "12 in", "30 in", fill.Replace("LEAVES", $"{leaves}", StringComparison.Ordinal)))
            )
        );
}
