using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A solid top glued up from strips of equal width, fixed so that it may move across the seasons.</summary>
internal sealed class SolidTop : ITop
{
    // More are not glued up by hand at home; a wrong width or jointing is likelier.
    private const int MostStrips = 60;

    public KindInfo Info { get; } =
        new(
            "solid-top",
            "Solid top",
            "A top glued up from strips, fastened so it can move with the seasons.",
            [
                new("material", "Boards", MemberType.Role, null),
                new("jointing", "Jointing allowance per board", MemberType.Length, "1/8 in"),
                new("cut_long", "Strips cut long by", MemberType.Length, "1 in"),
                .. Tops.OverhangMembers,
            ]
        );

    public Length Thickness(NodeReader members) => members.Role("material").Thickness;

    public Overhang Overhang(NodeReader members) => Tops.Overhang(members);

    public void Build(NodeReader members, Outside outside, Builder builder)
    {
        var (material, jointing, longer) = (
            members.Role("material"),
            members.Length("jointing").Value,
            members.Length("cut_long").Value
        );
        if (members.Failed)
            return;
        var usable = (material.Width ?? outside.Depth.Value) - jointing;
        if (!usable.IsPositive)
            members.Fail("jointing", LengthFormat.WithUnit(jointing, members.Unit), "takes off the whole board");
        if (members.Failed)
            return;
        var whole = Tops.Whole(outside, material.Thickness);
        var count = (int)((whole.Dy.Ticks + usable.Ticks - 1) / usable.Ticks);
        if (count > MostStrips)
        {
            members.Fail(
                "material",
                material.Name,
                $"makes {count} strips of {LengthFormat.WithUnit(usable, members.Unit)}: at most {MostStrips}, so "
                    + $"use a wider board"
            );
            return;
        }

        var strips = new TopStrips(material, whole, outside, count, usable, jointing, longer);
        Lay(strips.All(members.Unit), builder);
    }

    // Each strip is glued to the one before, and fixed so that it may move.
    private static void Lay(IEnumerable<Draft> strips, Builder builder)
    {
        Draft? before = null;
        foreach (var next in strips)
        {
            var strip = builder.Add(next);
            if (before is not null)
                builder.Join(JointKind.Glued, strip, before, Axis.Y);
            foreach (var under in Tops.Under(builder, strip.Box))
                builder.Join(JointKind.Slotted, strip, under, Axis.Z);
            before = strip;
        }

        builder.Steps.Add(
            "Fasten the top with screws in slots or with buttons, tight only at the middle or the front, so it can move across "
                + "its width."
        );
    }
}
