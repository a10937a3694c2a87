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
                new("breadboard", "Breadboard ends", MemberType.Role, ""),
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
        var ends = BreadboardEnds.Read(members, material, outside);
        if (members.Failed)
            return;
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

        var (within, length) = (ends?.Within(whole) ?? whole, ends?.Strip(outside.Width) ?? outside.Width);
        var strips = new TopStrips(material, within, length, outside.Depth, count, usable, jointing, longer);
        var laid = Lay(strips.All(members.Unit), ends?.Tongue.Value ?? Length.Zero, builder);
        ends?.Add(whole, outside, laid, builder);
    }

    // Each strip is glued to the one before, and fixed so that it may move; not by the tongues at its ends.
    private static List<Draft> Lay(IEnumerable<Draft> strips, Length tongue, Builder builder)
    {
        var laid = new List<Draft>();
        foreach (var next in strips)
        {
            var strip = builder.Add(next);
            if (laid.Count > 0)
                builder.Join(JointKind.Glued, strip, laid[^1], Axis.Y);
            foreach (var under in Tops.Under(builder, strip.Box.Grown(Axis.X, -tongue, -tongue)))
                builder.Join(JointKind.Slotted, strip, under, Axis.Z);
            laid.Add(strip);
        }

        builder.Steps.Add("Fasten the top tight at its middle or its front alone, so that it can move across its width.");
        return laid;
    }
}
