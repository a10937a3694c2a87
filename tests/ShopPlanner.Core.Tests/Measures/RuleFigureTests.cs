using CsCheck;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Measures;

/// <summary>Settings told by the marks of a rule: thirty-seconds of an inch, half millimeters.</summary>
public sealed class RuleFigureTests
{
    [Theory]
    [InlineData("11 3/4", "11 ¾″")]
    [InlineData("11 31/32", "11 ³¹⁄₃₂″")]
    [InlineData("0", "0″")]
    [InlineData("48", "48″")]
    public void On_a_mark_nothing_is_said_beside_the_figure(string exact, string words)
    {
        var figure = Inches(exact);
        Assert.True(figure.IsOnMark);
        Assert.Equal((words, words, "", ""), (figure.Text, figure.InWords, figure.Nearness, figure.Shim));
    }

    // 11 47/64 lies between 11 23/32 and 11 3/4: the mark above, less a shim of 1/64.
    [Theory]
    [InlineData("11 47/64", "just under 11 ¾″ by ¹⁄₆₄″", "¹⁄₆₄″")]
    [InlineData("11 63/64", "just under 12″ by ¹⁄₆₄″", "¹⁄₆₄″")]
    [InlineData("1/64", "just under ¹⁄₃₂″ by ¹⁄₆₄″", "¹⁄₆₄″")]
    public void Between_marks_a_stop_stands_at_the_mark_above_and_a_shim_takes_off_the_rest(
        string exact,
        string words,
        string shim
    )
    {
        var figure = Inches(exact);
        Assert.Equal((words, shim), (figure.InWords, figure.Shim));
        Assert.True(figure.Mark > figure.Exact);
    }

    // A third of an inch is 21.3 of 64: 11/32 less 0.0104.
    [Fact]
    public void What_is_no_sixty_fourth_is_told_in_thousandths()
    {
        var figure = RuleFigure.NotShort(Length.FromInches(1, 1, 3), LengthUnit.Inch);
        Assert.Equal(("just under 1 ¹¹⁄₃₂″ by 0.010″", "0.010″"), (figure.InWords, figure.Shim));
    }

    // Two tenths are less than the thinnest shim, and set by eye.
    [Theory]
    [InlineData("600", "600 mm", "")]
    [InlineData("876.5", "876.5 mm", "")]
    [InlineData("876.3", "just under 876.5 mm", "")]
    [InlineData("876.6", "just under 877 mm by 0.4 mm", "0.4 mm")]
    public void Millimeters_are_set_to_the_half(string exact, string words, string shim)
    {
        var figure = RuleFigure.NotShort(LengthText.Parse(exact, LengthUnit.Millimetre).Value, LengthUnit.Millimetre);
        Assert.Equal((words, shim), (figure.InWords, figure.Shim));
    }

    [Theory]
    [InlineData("25/64", "just over ⅜″ by ¹⁄₆₄″", "¹⁄₆₄″")]
    [InlineData("3/8", "⅜″", "")]
    public void A_strip_that_is_taken_off_is_never_more_than_it_may_be(string exact, string words, string more)
    {
        var figure = RuleFigure.NotMore(LengthText.Parse(exact, LengthUnit.Inch).Value, LengthUnit.Inch);
        Assert.Equal((words, more), (figure.InWords, figure.Shim));
    }

    // Half the thickness of paper, on either side of a mark.
    [Theory]
    [InlineData(16, true)]
    [InlineData(-16, true)]
    [InlineData(17, false)]
    [InlineData(-17, false)]
    public void What_nobody_sees_is_not_told(long ticks, bool isOnMark)
    {
        var exact = Length.FromInches(11, 3, 4) + Length.FromTicks(ticks);
        Assert.Equal(isOnMark, RuleFigure.NotShort(exact, LengthUnit.Inch).IsOnMark);
        Assert.Equal(isOnMark, RuleFigure.NotMore(exact, LengthUnit.Inch).IsOnMark);
        Assert.Equal(
            isOnMark ? "11 ¾″"
                : ticks < 0 ? "11 ¾″"
                : "11 ²⁵⁄₃₂″",
            RuleFigure.NotShort(exact, LengthUnit.Inch).Text
        );
    }

    [Fact]
    public void The_unit_may_be_named_elsewhere() =>
        Assert.Equal(
            ("just under 11 ¾", "11 ½"),
            (Inches("11 47/64").Short(withUnit: false), Inches("11 1/2").Short(withUnit: false))
        );

    [Fact]
    public void No_mark_is_a_whole_step_off_and_none_on_the_wrong_side() =>
        Gen.Select(Gen.Long[0, 100_000_000], Gen.Bool)
            .Sample(
                (ticks, inch) =>
                {
                    var (unit, step) = inch ? (LengthUnit.Inch, Length.TicksPerInch / 32) : (LengthUnit.Millimetre, 160L);
                    var exact = Length.FromTicks(ticks);
                    var (up, down) = (RuleFigure.NotShort(exact, unit), RuleFigure.NotMore(exact, unit));
                    Assert.Equal((0L, 0L), (up.Mark.Ticks % step, down.Mark.Ticks % step));
                    Assert.InRange(up.Mark.Ticks - ticks, -16, step - 1);
                    Assert.InRange(ticks - down.Mark.Ticks, -16, step - 1);
                    Assert.Equal(up.IsOnMark, down.IsOnMark);
                }
            );

    private static RuleFigure Inches(string exact) =>
        RuleFigure.NotShort(LengthText.Parse(exact, LengthUnit.Inch).Value, LengthUnit.Inch);
}
