using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Sawing;

/// <summary>Which saw makes a cut, by the cut's size and the saws there are.</summary>
public sealed class ToolChoiceTests
{
    private static readonly ShopSaws Unknown = ShopSaws.Of(SawSettings.Usual);

    private static readonly ShopSaws Full = new()
    {
        WidestRip = In(30),
        GaugeReach = In(20),
        HasMiterSaw = true,
        MiterReach = In(12.25m),
    };

    private static readonly ShopSaws NoTableSaw = Full with { HasTableSaw = false };

    private static readonly ShopSaws ByHand = new()
    {
        HasTableSaw = false,
        HasMiterSaw = false,
        IsLargeByHand = true,
    };

    public static TheoryData<string, double, CutTool> Crosscuts() =>
        new()
        {
            { "unknown", 5.5, CutTool.MiterSawOrGauge },
            { "unknown", 18, CutTool.Gauge },
            { "unknown", 48, CutTool.Straightedge },
            { "full", 12.25, CutTool.MiterSaw },
            { "full", 18, CutTool.Gauge },
            { "full", 20.5, CutTool.Straightedge },
            { "no table saw", 18, CutTool.Straightedge },
            { "by hand", 5.5, CutTool.HandSaw },
        };

    [Theory]
    [MemberData(nameof(Crosscuts))]
    public void A_crosscut_takes_the_handiest_saw_that_reaches(string shop, double inches, CutTool tool) =>
        Assert.Equal(tool, ToolChoice.Across(Saws(shop), In((decimal)inches)));

    [Theory]
    [InlineData("full", 40, 30, true)]
    [InlineData("full", 40, 31, false)]
    [InlineData("full", 20, 21, false)]
    [InlineData("unknown", 96, 48, true)]
    [InlineData("by hand", 40, 10, false)]
    public void The_fence_takes_what_it_reaches_and_can_guide(string shop, int edge, int setting, bool fits) =>
        Assert.Equal(fits, ToolChoice.FitsFence(Saws(shop), In(edge), In(setting)));

    [Theory]
    [InlineData("full", 19, 21, CutTool.Gauge)]
    [InlineData("full", 21, 24, CutTool.Straightedge)]
    [InlineData("full", 96, 31, CutTool.Straightedge)]
    [InlineData("no table saw", 19, 21, CutTool.Straightedge)]
    [InlineData("by hand", 19, 21, CutTool.HandSaw)]
    public void What_the_fence_cannot_guide_goes_to_the_gauge_or_along_a_line(string shop, int cut, int setting, CutTool tool) =>
        Assert.Equal(tool, ToolChoice.WithoutFence(Saws(shop), In(cut), In(setting)));

    private static ShopSaws Saws(string shop) =>
        shop switch
        {
            "full" => Full,
            "no table saw" => NoTableSaw,
            "by hand" => ByHand,
            _ => Unknown,
        };

    private static Length In(decimal inches) => Length.FromInches(inches);
}
