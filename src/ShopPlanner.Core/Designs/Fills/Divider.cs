using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
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
        var shares = Shares.Of(bay.Box.Dx, material.Thickness, sizes, members.Unit);
        var bays = ImmutableArray.CreateBuilder<Bay>();
        var (x, left) = (bay.Box.X, bay.Left);
        for (var i = 0; i < shares.Length; i++)
        {
            var right = i == shares.Length - 1 ? bay.Right : Upright(bay, x + shares[i], material, setback, letIn, builder);
            var half = Length.FromTicks(material.Thickness.Ticks / 2);
            bays.Add(
                bay with
                {
                    Box = bay.Box.With(Axis.X, x, x + shares[i]),
                    Left = left,
                    Right = right,
                    Front = bay.Front.With(
                        Axis.X,
                        i == 0 ? bay.Front.X : x,
                        i == shares.Length - 1 ? bay.Front.EndX : x + shares[i]
                    ),
                    CoverLeft = i == 0 ? bay.CoverLeft : half,
                    CoverRight = i == shares.Length - 1 ? bay.CoverRight : half,
                }
            );
            (x, left) = (x + shares[i] + material.Thickness, right);
        }

        return bays.ToImmutable();
    }

    private static Draft Upright(Bay bay, Length x, RoleMaterial material, Length setback, Length letIn, Builder builder)
    {
        var (below, above) = (bay.Bottom is null ? Length.Zero : letIn, bay.Top is null ? Length.Zero : letIn);
        var box = bay
            .Box.With(Axis.X, x, x + material.Thickness)
            .With(Axis.Y, bay.Box.Y + setback, bay.Box.EndY)
            .Grown(Axis.Z, below, above);
        var upright = builder.Add(
            new("Divider", "Carcass", material, box, Axis.Z, Axis.X)
            {
                Length = Working.Of(
                    "Divider length",
                    box.Dz,
                    "{clear} + {below} + {above}",
                    Working.Geometry,
                    ("clear", Working.Given("Clear height", bay.Box.Dz)),
                    ("below", Working.Given("let in below", below)),
                    ("above", Working.Given("let in above", above))
                ),
                FacesToFinish = "both faces, front edge",
            }
        );
        if (bay.Bottom is { } bottom)
            builder.Join(below.IsPositive ? JointKind.Dado : JointKind.Screwed, upright, bottom, Axis.Z, below);
        if (bay.Top is { } top)
            builder.Join(above.IsPositive ? JointKind.Dado : JointKind.Screwed, upright, top, Axis.Z, above);
        return upright;
    }
}
