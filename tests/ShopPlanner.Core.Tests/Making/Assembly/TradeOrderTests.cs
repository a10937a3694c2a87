using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>Built-in designs go together as the trade does it.</summary>
public sealed class TradeOrderTests
{
    // Handwork in Wood (1910), pp. 196-197, and Carpentry and Woodwork (1911), p. 367: the top goes on when the frame is whole.
    [Fact]
    public void A_top_goes_on_a_whole_frame_though_a_rail_leaves_its_screws_little_room()
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf("desk")));
        var plan = AssemblyOrder.Of(piece, WorkChoices.Usual);
        var top = plan.Steps.Single(step => step.Action == WorkAction.FastenTop);
        var after = plan.Steps.SkipWhile(step => step != top).Skip(1);
        Assert.DoesNotContain(after, step => step is { Phase: WorkPhase.Assembly, Subassembly: null, Joints.IsEmpty: false });
        Assert.Contains(plan.Findings, finding => finding.Text.Contains("right-angle driver", StringComparison.Ordinal));
    }

    // Common practice: a slat with six screws takes about five minutes.
    [Fact]
    public void Screws_are_driven_at_two_a_minute()
    {
        var plan = AssemblyOrder.Of(Made.Piece(File.ReadAllText(DesignFiles.PathOf("bed"))), WorkChoices.Usual);
        var slats = plan.Steps.Single(step => step.Handles.Length == 13);
        Assert.Equal(78, slats.Fasteners.Sum(item => item.Quantity));
        Assert.InRange(slats.Minutes, 60, 80);
    }

    // Clearance holes are drilled in the loose parts.
    [Fact]
    public void Clearance_holes_are_drilled_once()
    {
        var plan = AssemblyOrder.Of(Made.Piece(File.ReadAllText(DesignFiles.PathOf("bed"))), WorkChoices.Usual);
        Assert.DoesNotContain(
            plan.Steps.SelectMany(step => step.Says),
            line => line.Contains("Drill clearance", StringComparison.Ordinal)
        );
    }
}
