using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>A shelf that is dropped in on cleats at both ends.</summary>
internal sealed class CleatShelf : IFill
{
    public KindInfo Info { get; } =
        new(
            "cleat-shelf",
            "Drop-in shelf on cleats",
            "A shelf that rests on cleats at both ends and lifts out.",
            [
                new("material", "Shelf", MemberType.Role, null),
                new("cleat", "Cleats", MemberType.Role, null),
                new("height", "Clear height below the cleats", MemberType.Length, "0 in"),
                new("clearance", "Clearance at both ends, total", MemberType.Length, "1/8 in"),
                new("setback", "Set back from the front", MemberType.Length, "0 in"),
                .. EdgeAsked.ShelfMembers,
            ]
        );

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var (material, cleat, height) = (members.Role("material"), members.Role("cleat"), members.Length("height").Value);
        var (clearance, setback) = (members.Length("clearance"), members.Length("setback"));
        var edge = EdgeAsked.Read(members, material);
        if (members.Failed)
            return bay;
        var z = bay.Box.Z + height;
        var top = z + Width(cleat);
        var shelf = Loose.Shelf(
            "Drop-in shelf",
            material,
            Loose.Between(bay, clearance.Value, setback.Value).With(Axis.Z, top, top + material.Thickness),
            bay,
            (clearance, setback),
            edge,
            builder
        );
        Add(bay.Box.X, false);
        Add(bay.Box.EndX - cleat.Thickness, true);
        return bay;

        void Add(Length x, bool atEnd)
        {
            var box = bay
                .Box.With(Axis.X, x, x + cleat.Thickness)
                .With(Axis.Y, bay.Box.Y + setback.Value, bay.Box.EndY)
                .With(Axis.Z, z, top);
            var one = builder.Add(new("Cleat", "Shelves", cleat, box, Axis.Y, Axis.X) { FacesToFinish = "inner face" });
            if (builder.ButtAt(one, Axis.X, atEnd) == 0)
                builder.WarnOfNothing(one, " at the side", "Set the shelf back less, or use deeper legs.");
            builder.Join(JointKind.Resting, shelf, one, Axis.Z);
        }
    }

    /// <summary>Height of a cleat. One ripped from a sheet is as high as it is thick, doubled: enough for a row of screws (common
    /// practice).</summary>
    public static Length Width(RoleMaterial cleat) => cleat.Width ?? cleat.Thickness * 2;
}
