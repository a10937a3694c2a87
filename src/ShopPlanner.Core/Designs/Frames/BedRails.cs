using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>What runs between the posts of a bed, flush with their inner faces.</summary>
internal sealed record BedRails(BedSizes Bed, Legs Posts, Builder Builder)
{
    private const int BoltsAtAnEnd = 2;

    private Length Thick => Bed.Rail.Thickness;

    /// <summary>The rail at the foot or the head, which stays joined to its posts.</summary>
    public Draft Cross(string name, bool isFoot)
    {
        var y = isFoot ? Bed.Py - Thick : Bed.Depth - Bed.Py;
        return Between(name, Bed.Rail, y, Bed.RailHeight.Value, isFoot);
    }

    /// <summary>Side rails, bolted so that the bed comes apart, with a ledger each; the ledgers.</summary>
    public ImmutableArray<Draft> Sides() => [Side(true), Side(false)];

    /// <summary>Boards above the head rail with equal gaps, the uppermost flush with the posts.</summary>
    public void Headboard()
    {
        var (low, wide) = (Bed.RailHeight.Value + Bed.Tall, BedSizes.Wide(Bed.Head));
        var free = Bed.Outside.Height.Value - low - (wide * Bed.Boards);
        for (var i = 0; i < Bed.Boards; i++)
            Between(
                "Headboard board",
                Bed.Head,
                Bed.Depth - Bed.Py,
                low + (wide * i) + Length.FromTicks(free.Ticks * (i + 1) / Bed.Boards),
                false
            );
    }

    private Draft Between(string name, RoleMaterial material, Length y, Length z, bool isFoot)
    {
        var box = Box.Between(Bed.Px, y, z, Bed.Width - Bed.Px, y + material.Thickness, z + BedSizes.Wide(material));
        var rail = Builder.Add(
            new(name, "Frame", material, box, Axis.X, Axis.Y)
            {
                Length = Less("Length between the posts", Bed.Outside.Width, Bed.Px),
                FacesToFinish = "both faces, edges",
            }
        );
        var posts = isFoot ? new[] { Posts.FrontLeft, Posts.FrontRight } : [Posts.BackLeft, Posts.BackRight];
        foreach (var post in posts)
            Builder.Join(ButtJoint.Hidden(rail, post, Axis.X), rail, post, Axis.X);
        return rail;
    }

    private Draft Side(bool isLeft)
    {
        var x = isLeft ? Bed.Px - Thick : Bed.Width - Bed.Px;
        var z = Bed.RailHeight.Value;
        var box = Box.Between(x, Bed.Py, z, x + Thick, Bed.Depth - Bed.Py, z + Bed.Tall);
        var length = Less("Length between the posts", Bed.Outside.Depth, Bed.Py);
        var rail = Builder.Add(
            new("Side rail", "Frame", Bed.Rail, box, Axis.Y, Axis.X) { Length = length, FacesToFinish = "both faces, edges" }
        );
        foreach (var post in isLeft ? new[] { Posts.FrontLeft, Posts.BackLeft } : [Posts.FrontRight, Posts.BackRight])
        {
            Builder.Join(JointKind.Bolted, rail, post, Axis.Y);
            Builder.Buy("Bed bolts, 3/8 in × 6 in, with barrel nuts and washers", BoltsAtAnEnd);
        }

        var ledgerX = isLeft ? box.EndX : box.X - Bed.Ledger.Thickness;
        var ledger = Builder.Add(
            new(
                "Ledger",
                "Frame",
                Bed.Ledger,
                box.With(Axis.X, ledgerX, ledgerX + Bed.Ledger.Thickness).With(Axis.Z, z, z + Bed.LedgerHigh),
                Axis.Y,
                Axis.X
            )
            {
                Length = length,
            }
        );
        Builder.Join(ButtJoint.Of(ledger, rail, Axis.X), ledger, rail, Axis.X);
        return ledger;
    }

    private static Working<Length> Less(string name, Working<Length> whole, Length post) =>
        Working.Of(
            name,
            whole.Value - (post * 2),
            "{whole} − 2 × {post}",
            Working.Geometry,
            ("whole", whole),
            ("post", Working.Given("post", post))
        );
}
