using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
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
            ]
        );

    public ImmutableArray<Bay> Build(NodeReader members, Bay bay, ImmutableArray<Working<Length>?> sizes, Builder builder)
    {
        var (material, setback, letIn) = (
            members.Role("material"),
            members.Length("setback").Value,
            members.Length("let_in").Value
        );
        if (members.Failed)
            return [];
        var shares = Shares.Of(bay.Box.Dz, material.Thickness, sizes, members.Unit);
        var bays = ImmutableArray.CreateBuilder<Bay>();
        var (z, below) = (bay.Box.Z, bay.Bottom);
        for (var i = 0; i < shares.Length; i++)
        {
            var (first, last) = (i == 0, i == shares.Length - 1);
            var above = last ? bay.Top : Shelf(bay, z + shares[i], material, setback, letIn, builder);
            var half = Length.FromTicks(material.Thickness.Ticks / 2);
            bays.Add(
                bay with
                {
                    Box = bay.Box.With(Axis.Z, z, z + shares[i]),
                    Bottom = below,
                    Top = above,
                    Front = bay.Front.With(Axis.Z, first ? bay.Front.Z : z, last ? bay.Front.EndZ : z + shares[i]),
                    CoverBottom = first ? bay.CoverBottom : half,
                    CoverTop = last ? bay.CoverTop : half,
                }
            );
            (z, below) = (z + shares[i] + material.Thickness, above);
        }

        return bays.ToImmutable();
    }

    private static Draft Shelf(Bay bay, Length z, RoleMaterial material, Length setback, Length letIn, Builder builder)
    {
        var (left, right) = (bay.Left is null ? Length.Zero : letIn, bay.Right is null ? Length.Zero : letIn);
        var box = bay
            .Box.With(Axis.Z, z, z + material.Thickness)
            .With(Axis.Y, bay.Box.Y + setback, bay.Box.EndY)
            .Grown(Axis.X, left, right);
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
                Width = Working.Of(
                    "Shelf depth",
                    box.Dy,
                    "{clear} − {setback}",
                    Working.Geometry,
                    ("clear", Working.Given("Clear depth", bay.Box.Dy)),
                    ("setback", Working.Given("Set back from the front", setback))
                ),
                FacesToFinish = "both faces, front edge",
            }
        );
        Fasten(shelf, bay.Left, left, builder);
        Fasten(shelf, bay.Right, right, builder);
        return shelf;
    }

    private static void Fasten(Draft shelf, Draft? side, Length letIn, Builder builder)
    {
        if (side is not null)
            builder.Join(letIn.IsPositive ? JointKind.Dado : JointKind.Screwed, shelf, side, Axis.X, letIn);
    }
}
