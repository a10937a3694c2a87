using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Making.Assembly;

/// <summary>Whether a straight move brings a part in, worked out by what its whole way shares with what stands: apart from the
/// planner, which asks joint by joint.</summary>
internal sealed class Straight
{
    private static readonly JointKind[] Pegged =
    [
        JointKind.MortiseAndTenon,
        JointKind.Dowel,
        JointKind.Dovetail,
        JointKind.Beveled,
    ];

    private readonly Dictionary<string, Box> boxes;
    private readonly ILookup<(string, string), Joint> joints;

    public Straight(Piece piece)
    {
        boxes = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, copy => copy.Box);
        joints = piece
            .Joints.SelectMany(joint => new[] { ((joint.From, joint.Into), joint), ((joint.Into, joint.From), joint) })
            .ToLookup(one => one.Item1, one => one.Item2);
    }

    /// <summary>Whether the first comes to its place along an axis without a hit on the second; forward is to the right, to the
    /// back or up.</summary>
    public bool Comes(string mover, string stands, Axis axis, bool forward)
    {
        var between = joints[(mover, stands)].ToList();
        // A sliding door is lifted in from the front, under the depth that is left above it.
        if (between.Exists(joint => joint.Kind == JointKind.SlidingGroove))
            return axis == Axis.Y && forward && between.TrueForAll(joint => joint.From == mover);
        var final = boxes[mover].Shared(boxes[stands]);
        // It comes from where a move the other way would take it.
        var way = Swept(boxes[mover], axis, !forward).Shared(boxes[stands]);
        if (between.Exists(joint => IsPegged(joint, final) && !IsOut(joint, mover, axis, forward)))
            return false;
        if (final is not { } wood)
            return way is null;
        var let = between.Where(joint => joint.Depth.IsPositive).ToList();
        return let.Count > 0 && let.TrueForAll(joint => Fits(joint, mover, axis, forward, wood));
    }

    private bool IsPegged(Joint joint, Box? final) =>
        Array.IndexOf(Pegged, joint.Kind) >= 0
        || (joint.Depth.IsPositive && final is { } wood && wood.Extent(joint.Along) == boxes[joint.Into].Extent(joint.Along));

    // The tongue's whole way, seen from the part that takes it, is no more than the place where it ends up; in a groove it may
    // also run along.
    private bool Fits(Joint joint, string mover, Axis axis, bool forward, Box wood)
    {
        var from = joint.From == mover ? !forward : forward;
        var way = Swept(boxes[joint.From], axis, from).Shared(boxes[joint.Into])!.Value;
        if (axis == joint.Along)
            return way == wood && IsOut(joint, mover, axis, forward);
        return way == wood || (joint.Kind == JointKind.Groove && way.With(axis, wood.Start(axis), wood.End(axis)) == wood);
    }

    // Leaving takes the part that is let in straight away from what takes it.
    private bool IsOut(Joint joint, string mover, Axis axis, bool forward)
    {
        if (axis != joint.Along)
            return false;
        if (joint.Kind == JointKind.Resting)
            return true;
        var (from, into) = (boxes[joint.From], boxes[joint.Into]);
        var off = (from.Start(axis) + from.End(axis)) - (into.Start(axis) + into.End(axis));
        var leaving = joint.From == mover ? !forward : forward;
        return leaving ? off >= Length.Zero : off <= Length.Zero;
    }

    private static Box Swept(Box box, Axis axis, bool forward)
    {
        var far = Length.FromInches(10_000);
        return forward ? box.With(axis, box.Start(axis), far) : box.With(axis, -far, box.End(axis));
    }
}
