using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A bed: posts, side rails bolted between them so that it comes apart, ledgers, a middle beam on legs, slats, a
/// headboard of boards. The foot is in front, the head behind.</summary>
internal sealed class BedFrame : IFrame
{
    public KindInfo Info { get; } =
        new(
            "bed-frame",
            "Bed frame",
            "Posts, bolted side rails, ledgers, a middle beam on legs, slats, and a headboard of boards.",
            [
                new("post", "Posts", MemberType.Role, null),
                new("rail", "Rails", MemberType.Role, null),
                new("ledger", "Ledgers", MemberType.Role, null),
                new("beam", "Middle beam and its legs", MemberType.Role, ""),
                new("slat", "Slats", MemberType.Role, null),
                new("slats", "Slats (0 for gaps of at most 3 in)", MemberType.Count, "0"),
                new("head", "Headboard", MemberType.Role, null),
                new("boards", "Boards of the headboard", MemberType.Count, "2"),
                new("rail_height", "Height of the rails", MemberType.Length, "7 in"),
                new("foot_height", "Height of the foot posts", MemberType.Length, "16 in"),
                new("beam_legs", "Legs under the middle beam", MemberType.Count, "2"),
            ]
        );

    public Bay? Build(NodeReader members, Outside outside, Builder builder)
    {
        if (BedSizes.Read(members, outside) is not { } bed)
            return null;
        var posts = bed.AddPosts(builder);
        var rails = new BedRails(bed, posts, builder);
        var (foot, head) = (rails.Cross("Foot rail", true), rails.Cross("Head rail", false));
        var ledgers = rails.Sides();
        rails.Headboard();
        var base_ = new BedBase(bed, builder);
        var beam = bed.Beam is null ? null : base_.Beam(foot, head);
        base_.Slats(ledgers, beam);
        Note(bed, builder);
        return null;
    }

    private static void Note(BedSizes bed, Builder builder)
    {
        builder.Steps.Add("Tighten the bed bolts again after a month, and twice a year.");
        builder.Warn(
            Severity.Safety,
            "Someone can be hurt when a bed breaks. Load it with more than the people's weight before anyone sleeps on it. "
                + "Cribs, bunk beds and high beds have standards of their own: this is none of them."
        );
        if (bed.Gap > BedSizes.MostGap)
            builder.Warn(
                Severity.Watch,
                $"The slats lie {LengthFormat.WithUnit(bed.Gap, builder.Unit)} apart. Many mattress makers ask for "
                    + $"{LengthFormat.WithUnit(BedSizes.MostGap, builder.Unit)} or less: add slats, or read the mattress's label."
            );
    }
}
