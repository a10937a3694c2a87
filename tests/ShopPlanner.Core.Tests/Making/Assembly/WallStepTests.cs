using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>What is done at the wall, and what comes before and after it.</summary>
public sealed class WallStepTests
{
    // Common practice: a case is screwed to the studs while its doors are off.
    [Fact]
    public void Doors_are_hung_again_when_the_piece_is_anchored()
    {
        var steps = Steps("pantry-cupboard");
        var anchor = steps.Single(step => step.Action == WorkAction.FixToWall);
        var doors = Assert.Single(steps, step => step.Id.StartsWith("put-back:", StringComparison.Ordinal));
        Assert.Contains(anchor.Id, doors.After);
        Assert.True(steps.IndexOf(anchor) < steps.IndexOf(doors));
    }

    // Common practice: what hangs on bevels alone comes off when somebody pushes it up.
    [Fact]
    public void What_hangs_on_a_cleat_is_kept_from_being_lifted_off_where_it_is_hung()
    {
        var wall = Steps("floating-shelf").Single(step => step.Action == WorkAction.FixToWall);
        Assert.Contains(wall.Says, line => line.Contains("one screw from below", StringComparison.Ordinal));
    }

    private static List<WorkStep> Steps(string design) =>
        [.. WorkPlanner.Of(Made.Piece(File.ReadAllText(DesignFiles.PathOf(design))), WorkChoices.Usual).Steps];
}
