using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A seat or top of boards with equal gaps between them, each screwed down to what it lies on: water runs off, and each
/// board moves by itself.</summary>
internal sealed class SlattedTop : ITop
{
    public KindInfo Info { get; } =
        new(
            "slatted-top",
            "Slatted top",
            "Boards with equal gaps, each screwed down: for a seat or an outdoor table.",
            [
                new("material", "Boards", MemberType.Role, null),
                new("count", "Boards", MemberType.Count, "5"),
                new("lie", "Direction", MemberType.Choice, "across", "across", "lengthways"),
                new("width", "Board width (sheet stock)", MemberType.Length, "2 1/2 in"),
                .. Tops.OverhangMembers,
            ]
        );

    public Length Thickness(NodeReader members) => members.Role("material").Thickness;

    public Overhang Overhang(NodeReader members) => Tops.Overhang(members);

    public void Build(NodeReader members, Outside outside, Builder builder)
    {
        var (material, count, width) = (members.Role("material"), members.Count("count"), members.Length("width").Value);
        var (row, along) = members.Choice("lie") == "across" ? (Axis.X, Axis.Y) : (Axis.Y, Axis.X);
        if (members.Failed)
            return;
        width = material.Width ?? width;
        var whole = Tops.Whole(outside, material.Thickness);
        var free = whole.Extent(row) - (width * count);
        if (count < 2)
            members.Fail("count", Text(count), "must be at least 2 boards");
        else if (free < Length.Zero)
            members.Fail("count", Text(count), "boards are wider in total than the top");
        if (members.Failed)
            return;
        for (var i = 0; i < count; i++)
        {
            var start = (width * i) + Length.FromTicks(free.Ticks * i / (count - 1));
            Lay(material, whole.With(row, start, start + width), along, outside, builder);
        }

        if (free.Ticks / (count - 1) > 0)
            ShopAids.Spacer(material, Length.FromTicks(free.Ticks / (count - 1)), builder);
    }

    private static void Lay(RoleMaterial material, Box box, Axis along, Outside outside, Builder builder)
    {
        var board = builder.Add(
            new("Seat board", "Seat", material, box, along, Axis.Z)
            {
                Length = along == Axis.X ? outside.Width : outside.Depth,
                FacesToFinish = "all faces",
            }
        );
        var below = Tops.Under(builder, box).ToList();
        foreach (var one in below)
            builder.Join(ButtJoint.Of(board, one, Axis.Z), board, one, Axis.Z);
        if (below.Count < 2)
            builder.WarnOfNothing(board, " at both ends", "Run the boards the other way, or use a smaller overhang.");
    }

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);
}
