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
        var level =
            flat == Axis.Z
                ? bay.Box.With(Axis.Z, bay.Box.Z, bay.Box.Z + material.Thickness)
                : bay.Box.With(Axis.Y, bay.Box.Y, bay.Box.Y + material.Thickness);
        for (var i = 0; i < count; i++)
            Slat(
                level,
                bay,
                material,
                width,
                Start(bay.Box.Start(row).Ticks, width.Ticks, free, count, i),
                (row, along, flat),
                builder
            );
        if (count > 1 && free > 0)
            Spacer(material, Length.FromTicks(free / (count - 1)), builder);
        return bay;
    }

    // The remainder of a tick goes to the first gaps, so that no rounding adds up; a single slat lies in the middle.
    private static Length Start(long from, long width, long free, int count, int i)
    {
        if (count == 1)
            return Length.FromTicks(from + (free / 2));
        var (gap, over) = (free / (count - 1), free % (count - 1));
        return Length.FromTicks(from + (i * (width + gap)) + Math.Min(i, over));
    }

    private static void Slat(
        Box level,
        Bay bay,
        RoleMaterial material,
        Length width,
        Length start,
        (Axis Row, Axis Along, Axis Flat) way,
        Builder builder
    )
    {
        var slat = builder.Add(
            new("Slat", "Slats", material, level.With(way.Row, start, start + width), way.Along, way.Flat)
            {
                Length = Working.Given("Clear length", bay.Box.Extent(way.Along)),
                FacesToFinish = "both faces, all edges",
            }
        );
        var carried =
            Fasten(slat, way.Along, false, JointKind.PocketScrew, builder)
            + Fasten(slat, way.Along, true, JointKind.PocketScrew, builder)
            + Fasten(slat, Axis.Z, false, JointKind.Screwed, builder);
        if (carried == 0)
            builder.Warn(
                Severity.Fails,
                "Nothing supports the slats: they end in the air. Run them the other way, or add rails under them.",
                slat
            );
    }

    private static int Fasten(Draft slat, Axis axis, bool atEnd, JointKind kind, Builder builder)
    {
        var found = builder.Touching(slat.Box, axis, atEnd);
        foreach (var one in found.Where(one => one.Name != slat.Name))
            builder.Join(kind, slat, one, axis);
        return found.Count;
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
