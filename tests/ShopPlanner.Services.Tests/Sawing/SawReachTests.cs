using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Sawing;

namespace ShopPlanner.Services.Tests.Sawing;

/// <summary>What page, bench and packet tell a person to set, the saw can be set to.</summary>
public sealed class SawReachTests
{
    private const int Plans = 300;

    [Fact]
    public void No_fence_is_set_wider_than_the_saw_rips()
    {
        var fenced = 0;
        RandomPlans.All.Sample(
            view =>
            {
                foreach (var step in Steps(view).Where(IsFenced))
                {
                    fenced++;
                    Assert.True(
                        step is { Cut.Kind: CutKind.Rip } && step.Setting <= view.Request.Saw.WidestRip,
                        $"cut {step.Cut.N}: {step.Purpose} at {step.Setting}, widest rip {view.Request.Saw.WidestRip}"
                    );
                }
            },
            iter: Plans,
            threads: 1
        );
        Assert.True(fenced >= Plans, $"only {fenced} rips along a fence were tried");
    }

    [Fact]
    public void No_crosscut_is_longer_than_the_saw_reaches()
    {
        var tried = 0;
        RandomPlans.All.Sample(
            view =>
            {
                foreach (var traced in Traced(view).Where(traced => traced.Cut.Kind == CutKind.Crosscut))
                {
                    tried++;
                    Assert.True(
                        traced.Kerf.Dy <= view.Request.Saw.LongestCrosscut,
                        $"cut {traced.Cut.N} is {traced.Kerf.Dy} long"
                    );
                }
            },
            iter: Plans,
            threads: 1
        );
        Assert.True(tried >= Plans, $"only {tried} crosscuts were tried");
    }

    [Fact]
    public void The_packet_lists_no_fence_wider_than_the_saw_rips() =>
        RandomPlans.All.Sample(
            view =>
            {
                var packet = new PacketBuilder(
                    view,
                    new(new DateOnly(2026, 5, 2), PaperSize.Letter, "$", 1, Basis(view))
                ).Build();
                var fenced = packet
                    .Settings.SelectMany(one => one.Runs)
                    .Where(run => run.Way.StartsWith("Rip, table saw", StringComparison.Ordinal));
                Assert.All(
                    fenced,
                    run => Assert.True(run.Setting <= view.Request.Saw.WidestRip, $"rip at {run.Setting}: {run.Cuts}")
                );
            },
            iter: Plans,
            threads: 1
        );

    private static bool IsFenced(CutStep step) => step.Tool == CutTool.Fence;

    private static IEnumerable<CutStep> Steps(PlanView view) =>
        Enumerable.Range(0, view.Plan.Layouts.Length).SelectMany(layout => CutTexts.Steps(view, layout));

    private static IEnumerable<TracedCut> Traced(PlanView view) =>
        Enumerable.Range(0, view.Plan.Layouts.Length).SelectMany(layout => PlanLayouts.Trace(view, layout));

    private static PlanBasis Basis(PlanView view) =>
        new(
            "Case",
            ImmutableSortedDictionary<string, PlanStockName>.Empty,
            ImmutableSortedDictionary<string, PlanPartName>.Empty,
            ImmutableSortedDictionary<string, Guid>.Empty,
            ImmutableSortedDictionary<string, Guid>.Empty,
            ImmutableSortedDictionary<string, DateOnly>.Empty,
            view.Request.Materials.ToImmutableSortedDictionary(material => material.Id, _ => "Plywood"),
            ImmutableSortedDictionary<Guid, LengthUnit>.Empty
        );
}
