using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>An open rack of dimension lumber: posts, beams on edge, decks on them.</summary>
internal sealed class OpenRack : IFrame
{
    public KindInfo Info { get; } =
        new(
            "open-rack",
            "Open rack",
            "Posts of dimension lumber with beams between them and a deck on each level.",
            [
                new("post", "Posts", MemberType.Role, null),
                new("beam", "Beams", MemberType.Role, null),
                new("deck", "Decks", MemberType.Role, ""),
                new("levels", "Levels", MemberType.Count, "3"),
                new("lowest", "Height of the lowest beams", MemberType.Length, "6 in"),
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        var (post, beam, deck) = (members.Role("post"), members.Role("beam"), members.MaybeRole("deck"));
        var (levels, lowest) = (members.Count("levels"), members.Length("lowest").Value);
        if (!members.Failed && levels < 1)
            members.Fail("levels", "0", "must be at least 1 level");
        if (members.Failed)
            return null;
        var sizes = new LegSizes(post, false, outside);
        var legs = sizes.AddLegs(builder, "Post");
        var rails = new Rails(sizes, legs, beam, LegAndApron.Tall(beam), Length.Zero, RailJoint.Butted(JointKind.Screwed));
        var highest = outside.Height.Value - rails.Tall - (deck?.Thickness ?? Length.Zero);
        for (var i = 0; i < levels; i++)
            Level(
                rails,
                deck,
                lowest + Length.FromTicks(levels == 1 ? (highest - lowest).Ticks : (highest - lowest).Ticks * i / (levels - 1)),
                builder
            );
        if (highest - lowest < (rails.Tall * (levels - 1)))
            members.Fail(
                "levels",
                levels.ToString(System.Globalization.CultureInfo.InvariantCulture),
                "levels overlap: use fewer, or a taller rack"
            );
        return null;
    }

    private static void Level(Rails rails, RoleMaterial? deck, Length z, Builder builder)
    {
        var sizes = rails.Sizes;
        var (front, back) = (rails.Front("Long beam", z, builder), rails.Back("Long beam", z, builder));
        foreach (var x in new[] { sizes.Lx, sizes.Width - sizes.Lx - rails.Material.Thickness })
            Cross(rails, x, z, front, back, builder);
        if (deck is null)
            return;
        var box = Box.Between(
            sizes.Lx,
            Length.Zero,
            z + rails.Tall,
            sizes.Width - sizes.Lx,
            sizes.Depth,
            z + rails.Tall + deck.Thickness
        );
        var plate = builder.Add(
            new("Deck", "Decks", deck, box, Axis.X, Axis.Z)
            {
                Length = sizes.Between(Axis.X, rails.Joint.Tongue),
                Width = sizes.Outside.Depth,
                FacesToFinish = "upper face, edges",
            }
        );
        builder.Join(JointKind.Screwed, plate, front, Axis.Z);
        builder.Join(JointKind.Screwed, plate, back, Axis.Z);
    }

    private static void Cross(Rails rails, Length x, Length z, Draft front, Draft back, Builder builder)
    {
        var thick = rails.Material.Thickness;
        var box = Box.Between(x, thick, z, x + thick, rails.Sizes.Depth - thick, z + rails.Tall);
        var cross = builder.Add(
            new("Cross beam", "Frame", rails.Material, box, Axis.Y, Axis.X)
            {
                Length = Working.Of(
                    "Length between the long beams",
                    box.Dy,
                    "{depth} − 2 × {beam}",
                    Working.Geometry,
                    ("depth", rails.Sizes.Outside.Depth),
                    ("beam", Working.Given("beam", thick))
                ),
            }
        );
        builder.Join(JointKind.Screwed, cross, front, Axis.Y);
        builder.Join(JointKind.Screwed, cross, back, Axis.Y);
    }
}
