using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Sawing;

/// <summary>No piece is sent along the fence on an edge that is too short to guide it, and short pieces carry a warning.</summary>
public sealed class ShortRipTests
{
    private const int Plans = 300;
    private static readonly Length Short = Length.FromInches(12);

    [Fact]
    public void The_edge_on_the_fence_is_at_least_as_long_as_the_setting()
    {
        var (fenced, gauged) = (0, 0);
        EachCut(
            (step, edge) =>
            {
                gauged += step is { Cut.Kind: CutKind.Rip, Tool: CutTool.Gauge } ? 1 : 0;
                if (step.Tool != CutTool.Fence)
                    return;
                fenced++;
                Assert.True(edge >= step.Setting, $"cut {step.Cut.N}: {edge} on the fence, set to {step.Setting}");
            }
        );
        Assert.True(fenced >= Plans, $"only {fenced} rips along a fence were tried");
        Assert.True(gauged > 0, "no rip was short enough for the gauge");
    }

    [Fact]
    public void A_short_piece_along_the_fence_carries_a_warning_and_a_long_one_none()
    {
        var warned = 0;
        EachCut(
            (step, edge) =>
            {
                if (step.Tool != CutTool.Fence)
                    return;
                warned += edge < Short ? 1 : 0;
                Assert.Equal(edge < Short, step.Caution.Contains("push block", StringComparison.Ordinal));
            }
        );
        Assert.True(warned > 0, "no short piece was ripped");
    }

    [Fact]
    public void A_rip_by_the_gauge_is_called_a_crosscut_and_says_why() =>
        EachCut(
            (step, _) =>
            {
                if (step is not { Cut.Kind: CutKind.Rip, Tool: CutTool.Gauge, Purpose: CutPurpose.Part })
                    return;
                Assert.StartsWith("Crosscut ", CutSentences.Doing(step), StringComparison.Ordinal);
                Assert.EndsWith("to width with the miter gauge or a sled", CutSentences.Doing(step), StringComparison.Ordinal);
                Assert.StartsWith("Too short for the fence", step.Caution, StringComparison.Ordinal);
            }
        );

    private static void EachCut(Action<CutStep, Length> check) =>
        RandomPlans.All.Sample(
            view =>
            {
                for (var layout = 0; layout < view.Plan.Layouts.Length; layout++)
                    foreach (var (step, traced) in CutTexts.Steps(view, layout).Zip(PlanLayouts.Trace(view, layout)))
                        check(step, traced.Kerf.Dx);
            },
            iter: Plans,
            threads: 1
        );
}
