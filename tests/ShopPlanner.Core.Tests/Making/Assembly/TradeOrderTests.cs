using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>Built-in designs go together as the trade does it.</summary>
public sealed class TradeOrderTests
{
    public static TheoryData<string> Names => [.. DesignFiles.Names];

    // Handwork in Wood (1910), p. 130: a panel is never glued and goes in before the last part of its frame. So nothing is glued
    // up on a panel that lies loose: what is glued hangs together without it.
    [Theory, MemberData(nameof(Names))]
    public void What_is_glued_up_hangs_together_without_its_loose_panels(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        var copies = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, StringComparer.Ordinal);
        var free = piece
            .Joints.Where(joint => joint.Kind == JointKind.Groove && joint.Along != copies[joint.From].Along)
            .Select(joint => joint.From)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var step in AssemblyOrder.Of(piece, WorkChoices.Usual).Steps.Where(step => step.Wait is not null))
        {
            var glued = step.Joints.Select(index => piece.Joints[index]).Where(joint => !free.Contains(joint.From)).ToList();
            var handled = step.Handles.Where(mark => !free.Contains(mark)).ToList();
            Assert.All(
                handled,
                mark => Assert.True(glued.Exists(joint => joint.From == mark || joint.Into == mark), $"{step.Id}: {mark} hangs on nothing")
            );
        }
    }

    [Fact]
    public void A_case_is_built_up_on_one_side()
    {
        var steps = AssemblyOrder.Of(Made.Piece(File.ReadAllText(DesignFiles.PathOf("pantry-cupboard"))), WorkChoices.Usual).Steps;
        var first = steps.First(step => step.Subassembly is null && step.Moves.Length > 0);
        Assert.StartsWith("A", Assert.Single(first.Moves, move => move.Along is null).Marks.Single(), StringComparison.Ordinal);
    }

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
        Assert.DoesNotContain(plan.Steps.SelectMany(step => step.Says), line => line.Contains("Drill clearance", StringComparison.Ordinal));
    }
}
