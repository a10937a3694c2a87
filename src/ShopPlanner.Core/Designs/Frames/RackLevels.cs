using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The levels of an open rack: long beams on the outer faces of the posts, cross beams on their inner faces, a deck on
/// both.</summary>
/// <param name="Sizes">Of the posts, which stand behind the long beams.</param>
/// <param name="Posts">The posts.</param>
/// <param name="Beam">Of the beams; they stand on edge.</param>
/// <param name="Tall">Their extent upwards.</param>
/// <param name="Deck">Of the decks; null for none.</param>
internal sealed record RackLevels(LegSizes Sizes, Legs Posts, RoleMaterial Beam, Length Tall, RoleMaterial? Deck)
{
    private Length Thick => Beam.Thickness;

    /// <summary>Adds one level.</summary>
    /// <param name="z">Of the underside of its beams.</param>
    /// <param name="builder">Takes the parts.</param>
    public void Add(Length z, Builder builder)
    {
        var front = Long(Length.Zero, z, Posts.FrontLeft, Posts.FrontRight, builder);
        var back = Long(Sizes.Depth - Thick, z, Posts.BackLeft, Posts.BackRight, builder);
        var left = Cross(Sizes.Lx, z, Posts.FrontLeft, Posts.BackLeft, builder);
        var right = Cross(Sizes.Width - Sizes.Lx - Thick, z, Posts.FrontRight, Posts.BackRight, builder);
        if (Deck is { } deck)
            Lay(deck, z + Tall, [front, back, left, right], builder);
    }

    private Draft Long(Length y, Length z, Draft left, Draft right, Builder builder)
    {
        var beam = builder.Add(
            new("Long beam", "Frame", Beam, Box.Between(Length.Zero, y, z, Sizes.Width, y + Thick, z + Tall), Axis.X, Axis.Y)
            {
                Length = Sizes.Outside.Width,
                FacesToFinish = "outer face, edges",
            }
        );
        foreach (var post in new[] { left, right })
            builder.Join(ButtJoint.Of(beam, post, Axis.Y), beam, post, Axis.Y);
        return beam;
    }

    private Draft Cross(Length x, Length z, Draft front, Draft back, Builder builder)
    {
        var box = Box.Between(x, Thick, z, x + Thick, Sizes.Depth - Thick, z + Tall);
        var beam = builder.Add(
            new("Cross beam", "Frame", Beam, box, Axis.Y, Axis.X)
            {
                Length = Working.Of(
                    "Length between the long beams",
                    box.Dy,
                    "{depth} − 2 × {beam}",
                    Working.Geometry,
                    ("depth", Sizes.Outside.Depth),
                    ("beam", Working.Given("beam", Thick))
                ),
            }
        );
        foreach (var post in new[] { front, back })
            builder.Join(ButtJoint.Of(beam, post, Axis.X), beam, post, Axis.X);
        return beam;
    }

    // Between the posts, from the outer face of the one long beam to that of the other.
    private void Lay(RoleMaterial deck, Length z, IReadOnlyList<Draft> beams, Builder builder)
    {
        var box = Box.Between(Sizes.Lx, Length.Zero, z, Sizes.Width - Sizes.Lx, Sizes.Depth, z + deck.Thickness);
        var plate = builder.Add(
            new("Deck", "Decks", deck, box, Axis.X, Axis.Z)
            {
                Length = Sizes.Between(Axis.X, RailJoint.Butted(JointKind.Screwed).Tongue),
                Width = Sizes.Outside.Depth,
                FacesToFinish = "upper face, edges",
            }
        );
        foreach (var beam in beams)
            builder.Join(ButtJoint.Of(plate, beam, Axis.Z), plate, beam, Axis.Z);
    }
}
