using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>
/// Members in the plane of the front, a face frame's or the front rails', before the parts that split a bay: a mid stile before a
/// divider, a mid rail before a fixed shelf. Doors and drawers beside each other close against them and hang on them.
/// </summary>
/// <param name="Asked">Whether there is to be one: <c>auto</c>, <c>yes</c> or <c>no</c>.</param>
/// <param name="Width">How wide it is; zero for the usual.</param>
internal sealed record FrontMembers(string Asked, Length Width)
{
    /// <summary>What a part that splits a bay takes for them.</summary>
    public static readonly MemberInfo[] Members =
    [
        new("front", "Stile or rail in front of it", MemberType.Choice, "auto", "auto", "yes", "no"),
        new("front_width", "Width of that stile or rail (0 for the usual)", MemberType.Length, "0 in"),
    ];

    // What two doors that lie over one member leave free between them, halved (common practice: 1/16 in).
    private static readonly Length HalfFree = Length.FromInches(1m / 32);

    /// <summary>Reads them.</summary>
    public static FrontMembers Read(NodeReader members) => new(members.Choice("front"), members.Length("front_width").Value);

    /// <summary>Refuses one that is too narrow for the part behind it, or has no plane to stand in.</summary>
    public void Check(NodeReader members, Bay bay, Length behind)
    {
        if (Asked == "yes" && bay.Mid is null)
            members.Fail("front", Asked, "has no face frame or front rails to stand between: use a face frame, or auto");
        var isAny = Enumerable.Range(0, Math.Max(0, bay.Fronts.Length - 1)).Any(place => Stands(bay, place));
        if (isAny && Wide(bay) < behind)
            members.Fail(
                "front_width",
                LengthFormat.WithUnit(Wide(bay), members.Unit),
                "is narrower than the part behind it: at least " + LengthFormat.WithUnit(behind, members.Unit)
            );
    }

    /// <summary>Whether one stands between a bay and the next.</summary>
    /// <param name="bay">The bay that is split.</param>
    /// <param name="place">Of the first of the two smaller bays.</param>
    public bool Stands(Bay bay, int place) =>
        bay.Mid is not null
        && Asked switch
        {
            "yes" => true,
            "no" => false,
            _ => bay.Fronts.Skip(place).Take(2).Any(one => one),
        };

    /// <summary>How wide it is.</summary>
    public Length Wide(Bay bay) => Width.IsPositive ? Width : bay.Mid!.Width;

    /// <summary>How much of the face over a part between two bays an overlay door of each may cover.</summary>
    /// <param name="face">The member's width, or the part's thickness where none stands before it.</param>
    public static Length Cover(Length face) => Length.Max(Length.Zero, Length.FromTicks(face.Ticks / 2) - HalfFree);

    /// <summary>A mid stile before a divider.</summary>
    /// <param name="bay">The bay that is split.</param>
    /// <param name="upright">The divider.</param>
    /// <param name="x">Of the stile.</param>
    /// <param name="builder">Takes it.</param>
    public Draft Stile(Bay bay, Draft upright, Length x, Builder builder)
    {
        var box = bay.Front.With(Axis.X, x, x + Wide(bay));
        return Add("Mid stile", box, Axis.Z, "Clear height between the rails", bay.Mid!, upright, builder);
    }

    /// <summary>A mid rail before a fixed shelf, its upper edge flush with the shelf's upper face.</summary>
    /// <param name="bay">The bay that is split.</param>
    /// <param name="shelf">The shelf.</param>
    /// <param name="endZ">Of the rail.</param>
    /// <param name="builder">Takes it.</param>
    public Draft Rail(Bay bay, Draft shelf, Length endZ, Builder builder)
    {
        var box = bay.Front.With(Axis.Z, endZ - Wide(bay), endZ);
        return Add("Mid rail", box, Axis.X, "Clear width between the stiles", bay.Mid!, shelf, builder);
    }

    private static Draft Add(string name, Box box, Axis along, string clear, FrontStock stock, Draft behind, Builder builder)
    {
        var member = builder.Add(
            new(name, stock.Assembly, stock.Material, box, along, Axis.Y)
            {
                Length = Working.Given(clear, box.Extent(along)),
                Width = Working.Given("Width of the " + name.ToLowerInvariant(), along == Axis.Z ? box.Dx : box.Dz),
                FacesToFinish = "front face, edges",
            }
        );
        foreach (var atEnd in new[] { false, true })
            if (builder.JoinAt(member, box, along, atEnd, into => ButtJoint.Hidden(member, into, along), Length.Zero) == 0)
                builder.WarnOfNothing(member, atEnd ? " at its far end" : " at its near end", "Use a frame with rails there.");
        if (behind.Box.Y == box.EndY)
            builder.Join(JointKind.Glued, member, behind, Axis.Y);
        return member;
    }
}
