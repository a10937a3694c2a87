using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Joints that the document declares on its free parts. Each must be there in the wood: the two touch, or the part
/// reaches into the other one by just the depth that is given. Where one of them is notched around the other, or both are
/// mitered, they touch in the cut.</summary>
internal static class FreeJoints
{
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    public static void Add(
        IReadOnlyDictionary<FreePart, IReadOnlyList<Draft>> parts,
        Scope scope,
        Builder builder,
        List<Fault> faults
    )
    {
        foreach (var (part, copies) in parts)
        foreach (var joint in part.Joints)
            Add(joint, copies, scope, builder, faults);
    }

    private static void Add(PartJoint joint, IReadOnlyList<Draft> copies, Scope scope, Builder builder, List<Fault> faults)
    {
        var depth = joint.Depth is { } text ? scope.Length("Depth", text, joint.Path + ".depth")?.Value : Length.Zero;
        if (depth is not { } deep)
            return;
        if (deep < Length.Zero)
        {
            faults.Add(Fault.Of(joint.Path + ".depth", joint.Depth, "is less than zero: give how far the part is let in"));
            return;
        }

        var others = builder.Drafts.Where(one => one.Purpose == PartPurpose.Member && IsNamed(one, joint.With)).ToList();
        if (others.Count == 0)
        {
            var names = builder.Drafts.Where(one => one.Purpose == PartPurpose.Member).Select(one => one.Name).Distinct();
            faults.Add(
                Fault.Of(joint.Path + ".with", joint.With, "isn't a part of this design: it has " + string.Join(", ", names))
            );
            return;
        }

        var pairs = copies
            .SelectMany(from => others.Where(into => into != from).Select(into => (From: from, Into: into)))
            .Where(pair => Meet(pair.From, pair.Into, joint.Along, deep))
            .ToList();
        foreach (var (from, into) in pairs)
            builder.Join(joint.Kind, from, into, joint.Along, deep);
        if (pairs.Count == 0)
            faults.Add(Fault.Of(joint.Path, joint.With, Apart(joint, deep)));
    }

    private static bool IsNamed(Draft draft, string name) => string.Equals(draft.Name, name, StringComparison.OrdinalIgnoreCase);

    // Face to face, or overlapping by the depth; beside each other in both other directions.
    private static bool Meet(Draft from, Draft into, Axis along, Length depth)
    {
        if (Axes.Any(axis => axis != along && !Overlap(from.Box, into.Box, axis).IsPositive))
            return false;
        var overlap = Overlap(from.Box, into.Box, along);
        return overlap == depth || (depth == Length.Zero && overlap.IsPositive && Touch(from, into));
    }

    private static bool Touch(Draft from, Draft into) =>
        from.Box.Shared(into.Box) is { } shared && Cutouts.Clear(from, into, shared);

    // Nothing where they touch, less than that where they lie apart.
    private static Length Overlap(Box one, Box other, Axis axis) =>
        Length.Min(one.End(axis), other.End(axis)) - Length.Max(one.Start(axis), other.Start(axis));

    private static string Apart(PartJoint joint, Length depth)
    {
        var axis = joint.Along.ToString().ToLowerInvariant();
        return depth.IsPositive
            ? $"isn't met along {axis} by just the depth given: move the part, or give the depth by which it is let in"
            : $"isn't touched along {axis}: move the part, or give the depth by which it is let in";
    }
}
