using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>Where fasteners stand along the face in which two parts meet.</summary>
internal static class Spots
{
    /// <summary>Adds where the first hole is, from an end of the joint, and how far apart the others are.</summary>
    public static void Add(FigureList figures, ImmutableArray<Length> places, WorkJoint joint)
    {
        var of = Name(joint);
        figures.Add("First hole from the end of the joint", of, places[0]);
        if (places.Length > 1)
            figures.Add("From hole to hole", of, places[1] - places[0]);
    }

    /// <summary>A joint in words: <c>rail to post</c>.</summary>
    public static string Name(WorkJoint joint) => $"{PartWords.Lower(joint.From.Name)} to {PartWords.Lower(joint.Into.Name)}";

    /// <summary>How many holes for how many joints.</summary>
    public static string Count(int holes, int joints) =>
        FormattableString.Invariant($"{holes} holes for {joints} joint{(joints == 1 ? "" : "s")}");

    /// <summary>Direction of the shorter side of the face in which two parts meet: fasteners stand in one line across
    /// it.</summary>
    public static Axis Narrow(WorkJoint joint)
    {
        var box = joint.Fit.Meeting!.Value;
        return Axes.All.Where(axis => axis != joint.Along).MinBy(axis => box.Extent(axis).Ticks);
    }

    /// <summary>Direction of the longer side of that face: fasteners stand along it.</summary>
    public static Axis Run(WorkJoint joint) => Axes.All.Single(axis => axis != joint.Along && axis != Narrow(joint));

    /// <summary>What the screws of a joint go through: the thinner part.</summary>
    public static Workpiece Near(WorkJoint joint) =>
        joint.From.Box.Extent(joint.Along) <= joint.Into.Box.Extent(joint.Along) ? joint.From : joint.Into;

    /// <summary>From the nearer side of a copy to the middle of that face, across it.</summary>
    public static Length Line(WorkJoint joint, Workpiece piece)
    {
        var (axis, box) = (Narrow(joint), joint.Fit.Meeting!.Value);
        var middle = box.Start(axis) + Length.FromTicks(box.Extent(axis).Ticks / 2);
        return Length.Min(middle - piece.Box.Start(axis), piece.Box.End(axis) - middle);
    }
}
