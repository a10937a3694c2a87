using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>Loose shelves on pins in rows of holes.</summary>
internal sealed class AdjustableShelves : IFill
{
    private const int PinsPerShelf = 4;

    public KindInfo Info { get; } =
        new(
            "adjustable-shelves",
            "Adjustable shelves",
            "Loose shelves on pins, with rows of holes in both sides.",
            [
                new("material", "Material", MemberType.Role, null),
                new("count", "Shelves", MemberType.Count, "2"),
                new("clearance", "Clearance at both ends, total", MemberType.Length, "1/8 in"),
                new("setback", "Set back from the front", MemberType.Length, "1/4 in"),
                .. EdgeAsked.ShelfMembers,
            ]
        );

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var (material, count) = (members.Role("material"), members.Count("count"));
        var (clearance, setback) = (members.Length("clearance"), members.Length("setback"));
        var edge = EdgeAsked.Read(members, material);
        if (members.Failed || count == 0)
            return bay;
        var box = Loose.Between(bay, clearance.Value, setback.Value);
        var pitch = (bay.Box.Dz.Ticks - (material.Thickness.Ticks * count)) / (count + 1);
        if (pitch <= 0)
            members.Fail(
                "count",
                count.ToString(System.Globalization.CultureInfo.InvariantCulture),
                "shelves leave no room between them in this bay"
            );
        if (members.Failed)
            return bay;
        for (var i = 0; i < count; i++)
        {
            var z = bay.Box.Z + Length.FromTicks((pitch * (i + 1)) + (material.Thickness.Ticks * i));
            Loose.Shelf("Shelf", material, box.With(Axis.Z, z, z + material.Thickness), bay, (clearance, setback), edge, builder);
        }

        Held(bay, box, builder);
        builder.Buy("Shelf pin", PinsPerShelf * count);
        return bay;
    }

    // Pins stand in what bounds the bay beside the shelf.
    private static void Held(Bay bay, Box box, Builder builder)
    {
        var beside = box.With(Axis.X, bay.Box.X, bay.Box.EndX);
        foreach (var (atEnd, where) in new[] { (false, "left"), (true, "right") })
            if (builder.Touching(beside, Axis.X, atEnd).Count == 0)
                builder.Warn(
                    Severity.Fails,
                    $"There is nothing at the {where} of the shelves to drill the pin holes in. Use deeper legs or a divider."
                );
    }
}

/// <summary>What shelves that lie loose have in common.</summary>
internal static class Loose
{
    /// <summary>The bay's plan less the room that a loose shelf wants.</summary>
    public static Box Between(Bay bay, Length clearance, Length setback)
    {
        var half = Length.FromTicks(clearance.Ticks / 2);
        return bay
            .Box.With(Axis.X, bay.Box.X + half, bay.Box.EndX - (clearance - half))
            .With(Axis.Y, bay.Box.Y + setback, bay.Box.EndY);
    }

    /// <summary>A loose shelf, its front edge treated.</summary>
    public static Draft Shelf(
        string name,
        RoleMaterial material,
        Box box,
        Bay bay,
        (Working<Length> Clearance, Working<Length> Setback) less,
        EdgeAsked edge,
        Builder builder
    )
    {
        box = box.Grown(Axis.Y, -edge.Takes, Length.Zero);
        var shelf = builder.Add(
            new(name, "Shelves", material, box, Axis.X, Axis.Z)
            {
                Length = Working.Of(
                    "Shelf length",
                    box.Dx,
                    "{clear} − {clearance}",
                    Working.Geometry,
                    ("clear", Working.Given("Clear width", bay.Box.Dx)),
                    ("clearance", less.Clearance)
                ),
                Width = edge.Depth("Shelf depth", bay.Box.Dy, less.Setback),
                FacesToFinish = "both faces, all edges",
            }
        );
        EdgeMaker.Treat(shelf, BoxSide.Front, edge, builder);
        return shelf;
    }
}
