using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Fixed shelves: bays one above the other, from below.</summary>
internal sealed class FixedShelf : ISplit
{
    public KindInfo Info { get; } =
        new(
            "fixed-shelf",
            "Fixed shelf",
            "Shelves fixed at both ends that split a bay one above the other.",
            [
                new("material", "Material", MemberType.Role, null),
                new("setback", "Set back from the front", MemberType.Length, "0 in"),
                new("let_in", "Dado depth in the sides", MemberType.Length, "0 in"),
                .. EdgeAsked.ShelfMembers,
            ]
        );

    public ImmutableArray<Bay> Build(NodeReader members, Bay bay, ImmutableArray<Working<Length>?> sizes, Builder builder)
    {
        var (material, letIn) = (members.Role("material"), members.Length("let_in").Value);
        var (setback, edge) = (members.Length("setback"), EdgeAsked.Read(members, material));
        if (members.Failed)
            return [];
        var shares = Shares.Of(bay.Box.Dz, material.Thickness, sizes, members.Unit);
        var bays = ImmutableArray.CreateBuilder<Bay>();
        var z = bay.Box.Z;
        for (var i = 0; i < shares.Length; i++)
        {
            var (first, last) = (i == 0, i == shares.Length - 1);
            if (!last)
                Add(members, bay, z + shares[i], material, (setback, edge), letIn, builder);
            if (members.Failed)
                return [];
            var half = Length.FromTicks(material.Thickness.Ticks / 2);
            bays.Add(
                bay with
                {
                    Box = bay.Box.With(Axis.Z, z, z + shares[i]),
                    Front = bay.Front.With(Axis.Z, first ? bay.Front.Z : z, last ? bay.Front.EndZ : z + shares[i]),
                    ReachBelow = first ? bay.ReachBelow : Length.Zero,
                    ReachAbove = last ? bay.ReachAbove : Length.Zero,
                    Behind = bay.Behind?.With(Axis.Z, z, last ? bay.Behind.Value.EndZ : z + shares[i]),
                    CoverBottom = first ? bay.CoverBottom : half,
                    CoverTop = last ? bay.CoverTop : half,
                }
            );
            z += shares[i] + material.Thickness;
        }

        return bays.ToImmutable();
    }

    private static void Add(
        NodeReader members,
        Bay bay,
        Length z,
        RoleMaterial material,
        (Working<Length> Setback, EdgeAsked Edge) front,
        Length letIn,
        Builder builder
    )
    {
        var clear = bay
            .Box.With(Axis.Z, z, z + material.Thickness)
            .With(Axis.Y, bay.Box.Y + front.Setback.Value + front.Edge.Takes, bay.Box.EndY);
        var (left, right) = (Into(members, clear, false, letIn, builder), Into(members, clear, true, letIn, builder));
        if (members.Failed)
            return;
        var box = clear.Grown(Axis.X, left, right);
        var shelf = builder.Add(
            new("Fixed shelf", "Carcass", material, box, Axis.X, Axis.Z)
            {
                Length = Working.Of(
                    "Shelf length",
                    box.Dx,
                    "{clear} + {left} + {right}",
                    Working.Geometry,
                    ("clear", Working.Given("Clear width", bay.Box.Dx)),
                    ("left", Working.Given("let in at the left", left)),
                    ("right", Working.Given("let in at the right", right))
                ),
                Width = front.Edge.Depth("Shelf depth", bay.Box.Dy, front.Setback),
                FacesToFinish = front.Edge.Seen("both faces, front edge", "front edge"),
            }
        );
        EdgeMaker.Treat(shelf, BoxSide.Front, front.Edge, builder, clear);
        Fasten(shelf, clear, false, left, builder);
        Fasten(shelf, clear, true, right, builder);
    }

    private static Length Into(NodeReader members, Box clear, bool atEnd, Length letIn, Builder builder) =>
        Dadoes.Depth(members, builder.Touching(clear, Axis.X, atEnd), Axis.X, letIn);

    private static void Fasten(Draft shelf, Box clear, bool atEnd, Length letIn, Builder builder)
    {
        JointKind Kind(Draft into) => letIn.IsPositive ? JointKind.Dado : ButtJoint.Of(shelf, into, Axis.X);
        if (builder.JoinAt(shelf, clear, Axis.X, atEnd, Kind, letIn) == 0)
            builder.WarnOfNothing(
                shelf,
                atEnd ? " at its right end" : " at its left end",
                "Set it back less, or use deeper legs or a divider there."
            );
    }
}
