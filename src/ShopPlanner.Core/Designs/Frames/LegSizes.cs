using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Four legs at the corners and what runs between them; shared by frames that stand on legs.</summary>
internal sealed class LegSizes
{
    /// <param name="leg">Of the legs.</param>
    /// <param name="wideToFront">Whether their wide face looks to the front.</param>
    /// <param name="outside">Of the frame.</param>
    /// <param name="inset">How far they stand in from the front and the back.</param>
    public LegSizes(RoleMaterial leg, bool wideToFront, Outside outside, Length inset = default)
    {
        (Leg, Outside, Inset) = (leg, outside, inset);
        var wide = leg.Width ?? leg.Thickness;
        (Lx, Ly) = wideToFront ? (wide, leg.Thickness) : (leg.Thickness, wide);
        Flat = wideToFront ? Axis.Y : Axis.X;
    }

    public RoleMaterial Leg { get; }

    public Outside Outside { get; }

    /// <summary>Extent of a leg along the width.</summary>
    public Length Lx { get; }

    /// <summary>Extent of a leg along the depth.</summary>
    public Length Ly { get; }

    public Length Width => Outside.Width.Value;

    public Length Depth => Outside.Depth.Value;

    private Axis Flat { get; }

    private Length Inset { get; }

    /// <summary>Front left, front right, back left, back right.</summary>
    public Legs AddLegs(Builder builder, string name)
    {
        Draft At(Length x, Length y) =>
            builder.Add(
                new(name, "Frame", Leg, new(x, y, Length.Zero, Lx, Ly, Outside.Height.Value), Axis.Z, Flat)
                {
                    Length = Outside.Height,
                    FacesToFinish = "all faces",
                }
            );
        return new(
            At(Length.Zero, Inset),
            At(Width - Lx, Inset),
            At(Length.Zero, Depth - Ly - Inset),
            At(Width - Lx, Depth - Ly - Inset)
        );
    }

    /// <summary>Length of a rail between two legs, tongues included.</summary>
    public Working<Length> Between(Axis axis, Working<Length> tongue)
    {
        var (whole, leg) = axis == Axis.X ? (Outside.Width, Lx) : (Outside.Depth, Ly);
        return tongue.Value.IsPositive
            ? Working.Of(
                "Rail length",
                whole.Value - (leg * 2) + (tongue.Value * 2),
                "{whole} − 2 × {leg} + 2 × {tongue}",
                Working.Geometry,
                ("whole", whole),
                ("leg", Working.Given("leg", leg)),
                ("tongue", tongue)
            )
            : Working.Of(
                "Rail length",
                whole.Value - (leg * 2),
                "{whole} − 2 × {leg}",
                Working.Geometry,
                ("whole", whole),
                ("leg", Working.Given("leg", leg))
            );
    }
}

/// <summary>Legs at the corners.</summary>
internal sealed record Legs(Draft FrontLeft, Draft FrontRight, Draft BackLeft, Draft BackRight);

/// <summary>Rails between legs, all at one height.</summary>
/// <param name="Sizes">Of the legs.</param>
/// <param name="Legs">The legs.</param>
/// <param name="Material">Of the rails; they stand on edge.</param>
/// <param name="Tall">Their extent upwards.</param>
/// <param name="SetBack">From the outer faces of the legs.</param>
/// <param name="Joint">How they are joined, and how far they are let into each leg.</param>
internal sealed record Rails(LegSizes Sizes, Legs Legs, RoleMaterial Material, Length Tall, Length SetBack, RailJoint Joint)
{
    // Between two doors a member of the front is as wide as its stock, 2 1/2 in at most (common practice).
    private static readonly Length WidestMid = Length.FromInches(2.5m);

    /// <summary>What stands between two bays in the plane of the front rails.</summary>
    public FrontStock Mid => new(Material, Length.Min(Tall, WidestMid), "Frame");

    public Draft Front(string name, Length z, Builder builder) =>
        Long(name, z, SetBack, Legs.FrontLeft, Legs.FrontRight, builder);

    public Draft Back(string name, Length z, Builder builder) =>
        Long(name, z, Sizes.Depth - SetBack - Material.Thickness, Legs.BackLeft, Legs.BackRight, builder);

    public Draft Left(string name, Length z, Builder builder) => Short(name, z, SetBack, Legs.FrontLeft, Legs.BackLeft, builder);

    public Draft Right(string name, Length z, Builder builder) =>
        Short(name, z, Sizes.Width - SetBack - Material.Thickness, Legs.FrontRight, Legs.BackRight, builder);

    private Draft Long(string name, Length z, Length y, Draft left, Draft right, Builder builder)
    {
        var box = Box.Between(Sizes.Lx, y, z, Sizes.Width - Sizes.Lx, y + Material.Thickness, z + Tall);
        return Add(name, box, Axis.X, Joint.ForLong(), left, right, builder);
    }

    private Draft Short(string name, Length z, Length x, Draft front, Draft back, Builder builder)
    {
        var box = Box.Between(x, Sizes.Ly, z, x + Material.Thickness, Sizes.Depth - Sizes.Ly, z + Tall);
        return Add(name, box, Axis.Y, Joint, front, back, builder);
    }

    private Draft Add(string name, Box clear, Axis along, RailJoint joint, Draft one, Draft other, Builder builder)
    {
        var tongue = joint.Tongue.Value;
        var rail = builder.Add(
            new(name, "Frame", Material, clear.Grown(along, tongue, tongue), along, along == Axis.X ? Axis.Y : Axis.X)
            {
                Length = Sizes.Between(along, joint.Tongue),
                FacesToFinish = "outer face, edges",
            }
        );
        foreach (var leg in new[] { one, other })
        {
            builder.Join(joint.Kind, rail, leg, along, tongue);
            if (joint.Kind == JointKind.Bolted)
                RailBolts.Buy(leg.Box.Extent(along), Tall, builder);
        }

        return rail;
    }
}
