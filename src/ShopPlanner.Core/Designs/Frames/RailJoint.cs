using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>How rails are joined to legs. The joint decides how far they are let in: butted ones not at all, a tenon by its
/// length.</summary>
/// <param name="Kind">The joint.</param>
/// <param name="Tongue">What is let into each leg.</param>
internal sealed record RailJoint(JointKind Kind, Working<Length> Tongue)
{
    /// <summary>What a frame with rails takes for their joints.</summary>
    public static readonly MemberInfo[] Members =
    [
        new("joint", "Joint", MemberType.Choice, "pocket", "pocket", "mortise", "dowel", "bolt"),
        new("tenon", "Tenon length (mortise or bolt; 0 for the usual)", MemberType.Length, "0 in"),
    ];

    // The barrel nut of a 3/8 in bolt splits a thinner rail (common practice).
    private static readonly Length ThinnestBolted = Length.FromInches(1.25m);

    /// <summary>Whether the long rails are bolted to the end frames, so that the piece comes apart.</summary>
    public bool AreLongBolted { get; private init; }

    /// <summary>The joint of the long rails.</summary>
    public RailJoint ForLong() => AreLongBolted ? Butted(JointKind.Bolted) : this;

    /// <summary>A joint in which nothing is let in.</summary>
    public static RailJoint Butted(JointKind kind) => new(kind, Working.Given("tenon", Length.Zero));

    /// <summary>Reads the joint of rails that stand back from the outer faces of the legs; null after a fault.</summary>
    /// <param name="members">Of the frame.</param>
    /// <param name="sizes">Of the legs.</param>
    /// <param name="setback">Of the rails.</param>
    /// <param name="rail">Thickness of the thickest rails.</param>
    /// <param name="thinnest">Thickness of the thinnest ones, where they differ.</param>
    public static RailJoint? Read(NodeReader members, LegSizes sizes, Length setback, Length rail, Length? thinnest = null)
    {
        var (joint, tenon) = (members.Choice("joint"), members.Length("tenon"));
        if (members.Failed)
            return null;
        var leg = Length.Min(sizes.Lx, sizes.Ly);
        if (setback + rail > leg)
        {
            var (place, value) = setback.IsPositive ? ("setback", setback) : ("leg", leg);
            members.Fail(place, Text(value, members), $"leaves rails of {Text(rail, members)} no leg to meet");
            return null;
        }

        if (joint is "pocket" or "dowel")
            return Butted(joint == "dowel" ? JointKind.Dowel : JointKind.PocketScrew);
        var isBolted = joint == "bolt";
        if (isBolted && (thinnest ?? rail) < ThinnestBolted)
        {
            members.Fail(
                "joint",
                joint,
                $"splits rails of {Text(thinnest ?? rail, members)}: a barrel nut needs at least "
                    + $"{Text(ThinnestBolted, members)}. "
                    + "Use thicker rails, or another joint"
            );
            return null;
        }

        // Two tenons in one leg must not meet.
        var room = leg - setback - rail;
        var length = tenon.Value.IsPositive ? Chosen(members, tenon, room) : Usual(members, leg, rail, room);
        return length is null ? null : new(JointKind.MortiseAndTenon, length) { AreLongBolted = isBolted };
    }

    private static Working<Length>? Chosen(NodeReader members, Working<Length> tenon, Length room)
    {
        if (tenon.Value <= room)
            return tenon;
        members.Fail(
            "tenon",
            Text(tenon.Value, members),
            $"is too long: two tenons meet in the leg, at most {Text(room, members)}"
        );
        return null;
    }

    // As long as the mortise by its width, short of the tenon that comes from the side, with room for glue.
    private static Working<Length>? Usual(NodeReader members, Length leg, Length rail, Length room)
    {
        var thickness = MortiseTenon.Thickness(Working.Given("rail", rail), members.Unit);
        var usual = MortiseTenon.Blind(MortiseTenon.Depth(thickness, Working.Given("leg", leg)));
        var most = RuleMarks.Down(room - MortiseTenon.GlueRoom, members.Unit);
        if (Length.Min(usual.Value, most) < thickness.Value)
        {
            members.Fail(
                "joint",
                "mortise",
                $"and tenon: legs of {Text(leg, members)} and rails of {Text(rail, members)} leave no room for a mortise. "
                    + "Use thicker legs, thinner rails, pocket screws or dowels"
            );
            return null;
        }

        return usual.Value <= most
            ? usual
            : Working.Of(
                "Tenon length",
                most,
                "{room} − 1/8 in, to the mark below",
                MortiseTenon.Deep,
                ("room", Working.Given("Leg before the other tenon", room))
            );
    }

    private static string Text(Length length, NodeReader members) => LengthFormat.WithUnit(length, members.Unit);
}
