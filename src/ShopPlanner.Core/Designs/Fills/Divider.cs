using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Upright dividers: bays side by side.</summary>
internal sealed class Divider : ISplit
{
    public KindInfo Info { get; } =
        new(
            "divider",
            "Divider",
            "Upright parts that split a bay side by side.",
            [
                new("material", "Material", MemberType.Role, null),
                new("setback", "Set back from the front", MemberType.Length, "0 in"),
                new("let_in", "Dado depth, top and bottom", MemberType.Length, "0 in"),
                .. EdgeAsked.UprightMembers,
            ]
        );

    public ImmutableArray<Bay> Build(NodeReader members, Bay bay, ImmutableArray<Working<Length>?> sizes, Builder builder)
    {
        var (material, letIn) = (members.Role("material"), members.Length("let_in").Value);
        var (setback, edge) = (members.Length("setback").Value, EdgeAsked.Read(members, material));
        if (members.Failed)
            return [];
        var shares = Shares.Of(bay.Box.Dx, material.Thickness, sizes, members.Unit);
        var bays = ImmutableArray.CreateBuilder<Bay>();
        var (x, left) = (bay.Box.X, bay.Left);
        for (var i = 0; i < shares.Length; i++)
        {
            var (first, last) = (i == 0, i == shares.Length - 1);
            var right = last ? bay.Right : Upright(members, bay, x + shares[i], material, (setback, edge), letIn, builder);
            if (members.Failed)
                return [];
            var half = Length.FromTicks(material.Thickness.Ticks / 2);
            bays.Add(
                bay with
                {
                    Box = bay.Box.With(Axis.X, x, x + shares[i]),
                    Left = left,
                    Right = right,
                    Front = bay.Front.With(Axis.X, first ? bay.Front.X : x, last ? bay.Front.EndX : x + shares[i]),
                    FaceLeft = first ? bay.FaceLeft : null,
                    FaceRight = last ? bay.FaceRight : null,
                    Behind = bay.Behind?.With(Axis.X, x, x + shares[i]),
                    CoverLeft = first ? bay.CoverLeft : half,
                    CoverRight = last ? bay.CoverRight : half,
                }
            );
            (x, left) = (x + shares[i] + material.Thickness, right);
        }

        return bays.ToImmutable();
    }

    private static Draft? Upright(
        NodeReader members,
        Bay bay,
        Length x,
        RoleMaterial material,
        (Length Setback, EdgeAsked Edge) front,
        Length letIn,
        Builder builder
    )
    {
        var clear = bay
            .Box.With(Axis.X, x, x + material.Thickness)
            .With(Axis.Y, bay.Box.Y + front.Setback + front.Edge.Takes, bay.Box.EndY)
            .Grown(Axis.Z, bay.ReachBelow, bay.ReachAbove);
        var (below, above) = (Into(false), Into(true));
        if (members.Failed)
            return null;
        var upright = builder.Add(
            new("Divider", "Carcass", material, clear.Grown(Axis.Z, below, above), Axis.Z, Axis.X)
            {
                Length = Working.Of(
                    "Divider length",
                    clear.Dz + below + above,
                    "{clear} + {below} + {above}",
                    Working.Geometry,
                    ("clear", Working.Given("Clear height", clear.Dz)),
                    ("below", Working.Given("let in below", below)),
                    ("above", Working.Given("let in above", above))
                ),
                FacesToFinish = front.Edge.Seen("both faces, front edge", "front edge"),
            }
        );
        Fasten(upright, clear, below, above, builder);
        EdgeMaker.Treat(upright, BoxSide.Front, front.Edge, builder, clear);
        return upright;

        Length Into(bool atEnd) => Dadoes.Depth(members, builder.Touching(clear, Axis.Z, atEnd), Axis.Z, letIn);
    }

    // Whether what bounds it there reaches over more than half of its depth: a narrow rail in front alone holds nothing behind.
    private static bool IsDeep(Box clear, bool atEnd, Builder builder)
    {
        var met = builder.Touching(clear, Axis.Z, atEnd);
        return met.Count > 0
            && (Length.Min(met.Max(one => one.Box.EndY), clear.EndY) - Length.Max(met.Min(one => one.Box.Y), clear.Y)) * 2
                > clear.Dy;
    }

    // Between a bottom and a top it is held by both; between rails it stands behind the front ones and before the back ones.
    private static void Fasten(Draft upright, Box clear, Length below, Length above, Builder builder)
    {
        JointKind Hidden(Draft into) => ButtJoint.Hidden(upright, into, Axis.Y);
        JointKind Butt(Draft into, Length depth) => depth.IsPositive ? JointKind.Dado : ButtJoint.Of(upright, into, Axis.Z);
        var (low, high) = (
            builder.JoinAt(upright, clear, Axis.Z, false, into => Butt(into, below), below),
            builder.JoinAt(upright, clear, Axis.Z, true, into => Butt(into, above), above)
        );
        var faces =
            IsDeep(clear, false, builder) && IsDeep(clear, true, builder)
                ? 0
                : builder.JoinAt(upright, upright.Box, Axis.Y, false, Hidden, Length.Zero)
                    + builder.ButtAt(upright, Axis.Y, true);
        if (low + high + faces == 0)
            builder.WarnOfNothing(upright, "", "Give it a bottom, a top or rails to be fastened to.");
    }
}
