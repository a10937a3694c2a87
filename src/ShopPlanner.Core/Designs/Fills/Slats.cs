using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>
/// A row of slats: a slatted shelf at the foot of the bay, lengthways or from front to back, or upright slats across its front.
/// Slats and equal gaps fill the extent to the last tick; one spacer block from scrap sets every gap.
/// </summary>
internal sealed class Slats : IFill
{
    public KindInfo Info { get; } =
        new(
            "slats",
            "Slats",
            "A row of slats with equal gaps: a slatted shelf, or upright across the front.",
            [
                new("material", "Material", MemberType.Role, null),
                new("count", "Slats", MemberType.Count, "5"),
                new("lie", "Direction", MemberType.Choice, "lengthways", "lengthways", "across", "upright"),
                new("width", "Slat width (sheet stock)", MemberType.Length, "2 1/2 in"),
            ]
        );

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var (material, count, width) = (members.Role("material"), members.Count("count"), members.Length("width").Value);
        var (row, along, flat) = members.Choice("lie") switch
        {
            "lengthways" => (Axis.Y, Axis.X, Axis.Z),
            "across" => (Axis.X, Axis.Y, Axis.Z),
            _ => (Axis.X, Axis.Z, Axis.Y),
        };
        if (members.Failed || count == 0)
            return bay;
        width = material.Width ?? width;
        var free = bay.Box.Extent(row).Ticks - (width.Ticks * count);
        if (free < 0)
            members.Fail("count", count.ToString(CultureInfo.InvariantCulture), "slats are wider in total than the bay");
        if (members.Failed)
            return bay;
        var level = flat == Axis.Z ? Lying(bay, material) : bay.Box.With(Axis.Y, bay.Box.Y, bay.Box.Y + material.Thickness);
        var places = Enumerable
            .Range(0, count)
            .Select(i => Start(bay.Box.Start(row).Ticks, width.Ticks, free, count, i))
            .Select(start => level.With(row, start, start + width))
            .ToList();
        if (along == Axis.X)
            SlatBearers.Add(material, bay, places, builder);
        foreach (var place in places)
            Slat(place, bay, material, (along, flat), builder);
        if (count > 1 && free > 0)
            Spacer(material, Length.FromTicks(free / (count - 1)), builder);
        // What comes after stands on slats that lie.
        return flat == Axis.Z
            ? bay with
            {
                Box = bay.Box.With(Axis.Z, Length.Max(bay.Box.Z, level.EndZ), bay.Box.EndZ),
                ReachBelow = Length.Zero,
            }
            : bay;
    }

    // At the foot of the bay; between lower rails that bound it, flush with their upper edges, so that the slats end at them.
    private static Box Lying(Bay bay, RoleMaterial material)
    {
        var z = bay.ReachBelow >= material.Thickness ? bay.Box.Z - material.Thickness : bay.Box.Z;
        return bay.Box.With(Axis.Z, z, z + material.Thickness);
    }

    // The remainder of a tick goes to the first gaps, so that no rounding adds up; a single slat lies in the middle.
    private static Length Start(long from, long width, long free, int count, int i)
    {
        if (count == 1)
            return Length.FromTicks(from + (free / 2));
        var (gap, over) = (free / (count - 1), free % (count - 1));
        return Length.FromTicks(from + (i * (width + gap)) + Math.Min(i, over));
    }

    private static void Slat(Box place, Bay bay, RoleMaterial material, (Axis Along, Axis Flat) way, Builder builder)
    {
        var slat = builder.Add(
            new("Slat", "Slats", material, place, way.Along, way.Flat)
            {
                Length = Working.Given("Clear length", bay.Box.Extent(way.Along)),
                FacesToFinish = "both faces, all edges",
            }
        );
        if (!IsCarried(slat, way.Along, builder))
            builder.Warn(
                Severity.Fails,
                "Nothing supports the slats: they end in the air. Run them the other way, or add rails under them.",
                slat
            );
    }

    // What lies on rails is screwed down to them; what stands or hangs between members is held at both ends.
    private static bool IsCarried(Draft slat, Axis along, Builder builder)
    {
        if (along != Axis.Z && Lies(slat, along, builder))
            return true;
        return Ends(slat, along, false, builder) && Ends(slat, along, true, builder);
    }

    private static bool Lies(Draft slat, Axis along, Builder builder)
    {
        var below = builder.Touching(slat.Box, Axis.Z, false).Where(one => one.Name != slat.Name).ToList();
        foreach (var one in below)
            builder.Join(ButtJoint.Of(slat, one, Axis.Z), slat, one, Axis.Z);
        return below.Count > 1 || below.Exists(one => IsUnderMost(one.Box, slat.Box, along));
    }

    private static bool IsUnderMost(Box below, Box slat, Axis along) =>
        (Length.Min(below.End(along), slat.End(along)) - Length.Max(below.Start(along), slat.Start(along))) * 2
        > slat.Extent(along);

    private static bool Ends(Draft slat, Axis along, bool atEnd, Builder builder)
    {
        var met = builder.Touching(slat.Box, along, atEnd).Where(one => one.Name != slat.Name).ToList();
        foreach (var one in met)
            builder.Join(ButtJoint.Hidden(slat, one, along), slat, one, along);
        return met.Count > 0;
    }

    private static void Spacer(RoleMaterial material, Length gap, Builder builder)
    {
        // A gap wider than the board is set by the block's length, which the board does not limit.
        var (length, width) = material.Width is { } board && gap > board ? (gap, board) : (Length.FromInches(6), gap);
        var block = new Box(Length.Zero, Length.Zero, Length.Zero, length, width, material.Thickness);
        builder.Add(
            new("Spacer for the slats", "Shop aids", material, block, Axis.X, Axis.Z)
            {
                Purpose = PartPurpose.Spacer,
                GrainMatters = false,
            }
        );
    }
}
