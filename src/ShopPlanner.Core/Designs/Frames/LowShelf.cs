using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A low shelf between the legs of a frame: rails all round, and slats from front to back on the long ones, as many as
/// are asked for, with equal gaps.</summary>
/// <param name="Rail">Of the low rails; they stand on edge.</param>
/// <param name="Slat">Of the slats; null for rails alone.</param>
/// <param name="Count">Slats.</param>
/// <param name="Height">Of the underside of the rails.</param>
internal sealed record LowShelf(RoleMaterial Rail, RoleMaterial? Slat, int Count, Length Height)
{
    /// <summary>What a frame with a low shelf takes for it.</summary>
    public static readonly MemberInfo[] Members =
    [
        new("low_rail", "Rails of the low shelf", MemberType.Role, ""),
        new("low_height", "Height of the low shelf's rails", MemberType.Length, "3 in"),
        new("slat", "Slats of the low shelf", MemberType.Role, ""),
        new("slats", "Slats", MemberType.Count, "6"),
    ];

    /// <summary>Upper face of the slats, or of the rails without any.</summary>
    public Length Top => Height + Tall + (HasSlats ? Slat!.Thickness : Length.Zero);

    private Length Tall => LegAndApron.Tall(Rail);

    private bool HasSlats => Slat is not null && Count > 0;

    // A slat of sheet goods is ripped to the width of a 1x3 (common practice).
    private Length Wide => Slat!.Width ?? Length.FromInches(2.5m);

    /// <summary>Reads it; null where the frame has none, or after a fault.</summary>
    /// <param name="members">Of the frame.</param>
    /// <param name="sizes">Of the legs.</param>
    /// <param name="room">Where the frame begins above.</param>
    /// <param name="above">What begins there, as people call it.</param>
    public static LowShelf? Read(NodeReader members, LegSizes sizes, Length room, string above)
    {
        if (members.MaybeRole("low_rail") is not { } rail)
            return null;
        var shelf = new LowShelf(rail, members.MaybeRole("slat"), members.Count("slats"), members.Length("low_height").Value);
        if (members.Failed)
            return null;
        if (shelf.Top > room)
            members.Fail(
                "low_height",
                Text(shelf.Height, members),
                $"puts the low shelf into the {above}: at most {Text(room - (shelf.Top - shelf.Height), members)}"
            );
        if (rail.Thickness > Length.Min(sizes.Lx, sizes.Ly))
            members.Fail("low_rail", rail.Name, "is thicker than the legs: use a thinner board");
        if (shelf.HasSlats && shelf.Free(sizes) < Length.Zero)
            members.Fail(
                "slats",
                shelf.Count.ToString(CultureInfo.InvariantCulture),
                "slats are wider in total than the space between the legs"
            );
        return members.Failed ? null : shelf;
    }

    /// <summary>Adds its parts.</summary>
    public void Add(LegSizes sizes, Legs legs, JointKind joint, Builder builder)
    {
        var rails = new Rails(sizes, legs, Rail, Tall, Length.Zero, RailJoint.Butted(joint));
        rails.Left("Low end rail", Height, builder);
        rails.Right("Low end rail", Height, builder);
        var (front, back) = (rails.Front("Low rail", Height, builder), rails.Back("Low rail", Height, builder));
        if (!HasSlats)
            return;
        var free = Free(sizes).Ticks;
        for (var i = 0; i < Count; i++)
            Lay(sizes, sizes.Lx + (Wide * i) + Length.FromTicks(free * (i + 1) / (Count + 1)), front, back, builder);
        if (free / (Count + 1) > 0)
            ShopAids.Spacer(Slat!, Length.FromTicks(free / (Count + 1)), builder);
    }

    private Length Free(LegSizes sizes) => sizes.Width - (sizes.Lx * 2) - (Wide * Count);

    // From the outer face of the one rail to that of the other.
    private void Lay(LegSizes sizes, Length x, Draft front, Draft back, Builder builder)
    {
        var z = Height + Tall;
        var slat = builder.Add(
            new(
                "Slat",
                "Slats",
                Slat!,
                Box.Between(x, Length.Zero, z, x + Wide, sizes.Depth, z + Slat!.Thickness),
                Axis.Y,
                Axis.Z
            )
            {
                Length = sizes.Outside.Depth,
                Width = Working.Given("Width of a slat", Wide),
                FacesToFinish = "both faces, all edges",
            }
        );
        foreach (var rail in new[] { front, back })
            if (ButtJoint.TakesPockets(rail, slat, Axis.Z))
                builder.Join(JointKind.PocketScrew, rail, slat, Axis.Z);
            else
                builder.Join(ButtJoint.Of(slat, rail, Axis.Z), slat, rail, Axis.Z);
    }

    private static string Text(Length length, NodeReader members) => LengthFormat.WithUnit(length, members.Unit);
}

/// <summary>Aids that are cut from scrap for a piece.</summary>
internal static class ShopAids
{
    /// <summary>Adds the block that sets the gap between slats.</summary>
    public static void Spacer(RoleMaterial material, Length gap, Builder builder)
    {
        // A gap wider than the board is set by the block's length, which the board does not limit.
        var (length, width) = material.Width is { } board && gap > board ? (gap, board) : (Length.FromInches(6), gap);
        builder.Add(
            new(
                "Spacer for the slats",
                "Shop aids",
                material,
                new Box(Length.Zero, Length.Zero, Length.Zero, length, width, material.Thickness),
                Axis.X,
                Axis.Z
            )
            {
                Purpose = PartPurpose.Spacer,
                GrainMatters = false,
            }
        );
    }
}
