using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Sawing;

/// <summary>How the setting of a cut is told to the hands at the saw.</summary>
public sealed class SettingFigureTests
{
    [Theory]
    [InlineData(CutTool.MiterSaw, "Set the stop at 11 ¾″, and hold a ¹⁄₆₄″ shim between stop and piece")]
    [InlineData(CutTool.Fence, "Set the fence at 11 ¾″, then move it ¹⁄₆₄″ toward the blade")]
    [InlineData(CutTool.HandSaw, "Draw the line ¹⁄₆₄″ short of 11 ¾″")]
    public void A_figure_between_marks_says_how_it_is_set(CutTool tool, string how)
    {
        var step = Step("11 47/64", "P", null) with { Tool = tool };
        Assert.Equal("just under 11 ¾″ by ¹⁄₆₄″", CutSentences.Setting(step, LengthUnit.Inch));
        Assert.Equal(how, CutSentences.Shimmed(step, LengthUnit.Inch));
    }

    [Fact]
    public void Cuts_that_follow_at_one_setting_say_it_once()
    {
        var (one, other) = (Step("11 47/64", "P", null), Step("5", "P", null));
        Assert.Equal(
            [true, false, false, true],
            CutSentences.Shimmed([one, one, other, one], LengthUnit.Inch).Select(words => words.Length > 0)
        );
    }

    [Fact]
    public void On_a_mark_nothing_changes()
    {
        var step = Step("11 23/32", "P", null);
        Assert.Equal(
            ("11 ²³⁄₃₂″", ""),
            (CutSentences.Setting(step, LengthUnit.Inch), CutSentences.Shimmed(step, LengthUnit.Inch))
        );
    }

    // What is measured is scrap, and the part lies beyond the blade: a fuller figure would make it short.
    [Theory]
    [InlineData("25/64", null, "P", false, "just over ⅜″ by ¹⁄₆₄″")]
    [InlineData("25/64", "P", null, true, "just over ⅜″ by ¹⁄₆₄″")]
    [InlineData("25/64", "P", "P", false, "just under ¹³⁄₃₂″ by ¹⁄₆₄″")]
    [InlineData("25/64", null, null, false, "just under ¹³⁄₃₂″ by ¹⁄₆₄″")]
    public void A_part_is_on_the_safe_side(string at, string? first, string? second, bool fromFarSide, string words) =>
        Assert.Equal(words, CutSentences.Setting(Step(at, first, second) with { FromFarSide = fromFarSide }, LengthUnit.Inch));

    [Fact]
    public void A_strip_is_trimmed_off_on_the_safe_side_too() =>
        Assert.Equal(
            "just over ⅜″ by ¹⁄₆₄″",
            CutSentences.Setting(Step("25/64", null, null) with { Purpose = CutPurpose.SquareEnd }, LengthUnit.Inch)
        );

    [Fact]
    public void The_store_is_asked_for_the_size_itself() =>
        Assert.Equal(
            ("11 ⁴⁷⁄₆₄″", ""),
            (
                CutSentences.Setting(Step("11 47/64", "P", null) with { Tool = CutTool.Store }, LengthUnit.Inch),
                CutSentences.Shimmed(Step("11 47/64", "P", null) with { Tool = CutTool.Store }, LengthUnit.Inch)
            )
        );

    // A part of a plan is never told shorter than it is: what is measured, and what is left beyond the blade.
    [Fact]
    public void No_part_of_a_plan_comes_out_short_by_its_mark() =>
        RandomPlans.All.Sample(
            view =>
            {
                for (var layout = 0; layout < view.Plan.Layouts.Length; layout++)
                    foreach (var step in CutTexts.Steps(view, layout))
                        if (CutSentences.Figure(step, LengthUnit.Millimetre) is { IsOnMark: false } figure)
                        {
                            var part = step.FromFarSide ? step.Cut.SecondPart : step.Cut.FirstPart;
                            Assert.True(part is null || figure.Mark > figure.Exact, $"cut {step.Cut.N}");
                        }
            },
            iter: 100,
            threads: 1
        );

    private static CutStep Step(string at, string? first, string? second)
    {
        var setting = LengthText.Parse(at, LengthUnit.Inch).Value;
        var cut = new Cut(1, "board", CutKind.Crosscut, setting, "1a", "1b", first, second);
        return new(cut, CutPurpose.Part, CutTool.MiterSaw, setting, FromFarSide: false, "");
    }
}
