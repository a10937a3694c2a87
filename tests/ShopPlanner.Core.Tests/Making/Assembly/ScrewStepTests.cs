using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>How long screws take, and what is said of their holes.</summary>
public sealed class ScrewStepTests
{
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
