using System.Collections.Immutable;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Core.Tests.Making;

/// <summary>Work on parts and the assembly in one order: nothing is glued twice, and what needs joined parts waits for
/// them.</summary>
public sealed class LateWorkTests
{
    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void What_needs_joined_parts_comes_after_they_are_joined(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        var late = OperationList.Of(piece, WorkChoices.Usual).Where(step => step.Phase != WorkPhase.Parts).ToList();
        var steps = Plan(name);
        foreach (var one in late)
        {
            var place = Place(steps, one.Id);
            var joins = steps.Where(step => step.Phase == WorkPhase.Assembly && step.Handles.Intersect(one.Handles).Any());
            Assert.All(joins, step => Assert.True(Place(steps, step.Id) < place, $"{one.Id} comes before {step.Id}"));
            var hung = steps.Where(step => step.Action == WorkAction.Hang && step.Handles.Intersect(one.Handles).Any());
            Assert.All(hung, step => Assert.True(Place(steps, step.Id) > place, $"{one.Id} comes after {step.Id}"));
        }
    }

    // Strips, layers and edging are glued as parts: the assembly closes no joint of theirs again.
    [Theory, MemberData(nameof(Names))]
    public void Panels_are_glued_up_once(string name)
    {
        var steps = Plan(name);
        var glued = steps.Where(step => step.Action == WorkAction.GlueUp).SelectMany(step => step.Joints).ToHashSet();
        var again = steps.Where(step => step.Phase == WorkPhase.Assembly && step.Action == WorkAction.Join);
        Assert.All(again, step => Assert.False(step.Joints.Length > 0 && step.Joints.All(glued.Contains), step.Id));
    }

    // Carpentry and Woodwork (1911), pp. 355 and 357: a door is glued, trimmed to its opening, then hung.
    [Fact]
    public void A_door_is_glued_sawn_fitted_bored_and_hung()
    {
        var steps = Plan("pantry-cupboard");
        string[] order = ["join:door", "size:door:door-stile", "fit:door", "hinge-cups:door-stile", "hang:door"];
        Assert.Equal(order.Select(id => Place(steps, id)).Order(), order.Select(id => Place(steps, id)));
    }

    private static ImmutableArray<WorkStep> Plan(string name) =>
        WorkPlanner.Of(Made.Piece(File.ReadAllText(DesignFiles.PathOf(name))), WorkChoices.Usual).Steps;

    private static int Place(ImmutableArray<WorkStep> steps, string id)
    {
        var place = steps.IndexOf(steps.Single(step => step.Id == id));
        Assert.True(place >= 0);
        return place;
    }
}
