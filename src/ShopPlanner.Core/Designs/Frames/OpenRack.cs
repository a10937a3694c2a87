using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

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
        // Beams lie on the outer faces of the posts and are screwed or bolted to them: screws in end grain would hold little.
        var inset = beam.Thickness;
        var sizes = new LegSizes(post, false, outside, inset);
        if (!(sizes.Depth - ((sizes.Ly + inset) * 2)).IsPositive)
        {
            members.Fail("post", post.Name, "leaves no room between the front and back posts: make the rack deeper");
            return null;
        }

        var posts = sizes.AddLegs(builder, "Post");
        var rack = new RackLevels(sizes, posts, beam, LegAndApron.Tall(beam), deck);
        var highest = outside.Height.Value - rack.Tall - (deck?.Thickness ?? Length.Zero);
        for (var i = 0; i < levels; i++)
            rack.Add(
                lowest + Length.FromTicks(levels == 1 ? (highest - lowest).Ticks : (highest - lowest).Ticks * i / (levels - 1)),
                builder
            );
        if (highest - lowest < (rack.Tall * (levels - 1)))
            members.Fail(
                "levels",
                levels.ToString(System.Globalization.CultureInfo.InvariantCulture),
                "levels overlap: use fewer, or a taller rack"
            );
        return null;
    }
}
