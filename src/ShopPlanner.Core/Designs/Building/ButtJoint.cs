using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>How two copies that butt can be fastened so that the screw stays inside both.</summary>
internal static class ButtJoint
{
    // Common practice: a screw into an edge thinner than this splits it. Half-inch plywood, 15/32 in, still takes a thin one.
    private static readonly Length ThinnestEdge = Length.FromInches(0.4375m);

    /// <summary>Screwed through the thinner one where that holds; else from a pocket; else glued.</summary>
    public static JointKind Of(Draft from, Draft into, Axis axis) =>
        TakesScrews(from, into, axis) ? JointKind.Screwed
        : TakesPockets(from, into, axis) ? JointKind.PocketScrew
        : JointKind.Glued;

    /// <summary>From a pocket, where no screw is seen from outside; else as the two allow.</summary>
    public static JointKind Hidden(Draft from, Draft into, Axis axis) =>
        TakesPockets(from, into, axis) ? JointKind.PocketScrew : Of(from, into, axis);

    /// <summary>Whether a wood screw that is sold holds them without coming out or splitting the edge it goes into.</summary>
    public static bool TakesScrews(Draft from, Draft into, Axis axis)
    {
        var (one, other) = (from.Box.Extent(axis), into.Box.Extent(axis));
        return Narrowest(from.Box, into.Box, axis) >= ThinnestEdge
            && Choice(Length.Min(one, other), Length.Max(one, other), ScrewJoint.Face) is not null;
    }

    /// <summary>Whether a pocket screw holds them: bored in the first one's face, out of its edge or end.</summary>
    public static bool TakesPockets(Draft from, Draft into, Axis axis) =>
        axis != from.Flat
        && from.Box.Extent(axis) >= PocketHole.Reach(from.Box.Extent(from.Flat))
        && Choice(from.Box.Extent(from.Flat), into.Box.Extent(axis), ScrewJoint.Pocket) is not null;

    // The contact's lesser side: what a screw has beside it.
    private static Length Narrowest(Box one, Box other, Axis axis) =>
        one.Meeting(other) is { } contact
            ? new[] { Axis.X, Axis.Y, Axis.Z }.Where(side => side != axis).Select(contact.Extent).Min()
            : Length.Zero;

    private static ScrewChoice? Choice(Length near, Length into, ScrewJoint joint) =>
        ScrewChoice.Of(Working.Given("near", near), Working.Given("into", into), joint).Choice;
}
