using System.Text;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>An extra part's repetition, grain and joints: what results is worked out and reads back as it was set.</summary>
public sealed class OwnPartEditsTests
{
    private const string Design = """
        { "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Ladder",
          "dimensions": [ { "name": "width", "value": "40" }, { "name": "depth", "value": "12" }, { "name": "height", "value": "2" } ],
          "materials": [ { "role": "pine", "name": "Pine", "form": "board", "thickness": "3/4", "width": "2 1/2" } ],
          "frame": { "kind": "none" },
          "parts": [
            { "name": "Rail", "material": "pine", "length": "40 in", "along": "x", "flat": "z", "at": [ ["0 in", "0 in", "0 in"] ] },
            { "name": "Rung", "material": "pine", "length": "12 in", "along": "y", "flat": "z",
              "at": [ ["0 in", "0 in", "3/4 in"] ], "joints": [ { "with": "Rail", "kind": "screwed", "along": "z" } ] } ] }
        """;

    private static readonly DesignDocument Ladder = DesignJson.Read(Encoding.UTF8.GetBytes(Design)).Document!;

    [Fact]
    public void Copies_follow_each_other_by_the_step()
    {
        var changed = Ladder.WithCopies("parts.1", "4").WithStep("parts.1", 0, "10 in");
        var rung = Worked(changed).Parts.Single(part => part.Name == "Rung");
        Assert.Equal([0m, 10m, 20m, 30m], rung.Copies.Select(copy => copy.Box.X.ToInches()).Order());
        Assert.Null(changed.WithCopies("parts.1", "1").Parts[1].Repeat);
    }

    [Fact]
    public void A_step_without_copies_changes_nothing() => Assert.Null(Ladder.WithStep("parts.1", 0, "10 in").Parts[1].Repeat);

    [Fact]
    public void A_joint_is_added_set_and_taken_away()
    {
        var added = Ladder.AddJoint("parts.0", "Rung");
        Assert.Equal("parts.0.joints.0", added.Parts[0].Joints.Single().Path);
        var set = added.WithJoint("parts.0.joints.0", joint => joint with { Along = Axis.Z, Kind = JointKind.Glued });
        Assert.Contains(Worked(set).Joints, joint => joint.Kind == JointKind.Glued);
        Assert.Empty(set.RemoveJoint("parts.0.joints.0").Parts[0].Joints);
    }

    [Fact]
    public void Joints_are_found_behind_a_part_that_is_gone()
    {
        var left = Ladder.RemovePart("parts.0");
        Assert.Equal("parts.0.joints.0", left.Parts.Single().Joints.Single().Path);
    }

    [Fact]
    public void Grain_that_does_not_matter_lets_the_part_rotate() =>
        Assert.False(Worked(Ladder.WithGrain("parts.0", true)).Parts.Single(part => part.Name == "Rail").GrainMatters);

    private static Piece Worked(DesignDocument document)
    {
        var read = DesignJson.Read(Encoding.UTF8.GetBytes(DesignJson.Write(document))).Document!;
        var (piece, faults) = DesignEvaluator.Evaluate(read, new Dictionary<string, string>());
        Assert.Empty(faults);
        return piece!;
    }
}
