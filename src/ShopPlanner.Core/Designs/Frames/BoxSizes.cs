using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>The sizes that the parts of a box share.</summary>
/// <param name="Side">Of the sides.</param>
/// <param name="Bottom">Of the bottom.</param>
/// <param name="Lid">Of the lid; null for an open box.</param>
/// <param name="Whole">The box without its lid.</param>
/// <param name="Groove">Depth of the bottom's groove.</param>
/// <param name="BottomZ">Underside of the bottom.</param>
/// <param name="FrontLower">How much lower than the ends the front is.</param>
/// <param name="BackLower">How much lower than the ends the back is.</param>
/// <param name="HasSlots">Whether the ends have hand slots.</param>
internal sealed record BoxSizes(
    RoleMaterial Side,
    RoleMaterial Bottom,
    RoleMaterial? Lid,
    Box Whole,
    Length Groove,
    Length BottomZ,
    Length FrontLower,
    Length BackLower,
    bool HasSlots
)
{
    // A hand slot 1 in high with 3/4 in of wood over it, and as much under it over the bottom (common practice).
    private static readonly Length LeastSlotted = Length.FromInches(3.5m);

    public Length Thick => Side.Thickness;

    /// <summary>What is done to the upper edges.</summary>
    public EdgeAsked Edge { get; private init; } = EdgeAsked.Plain;

    /// <summary>How deep the ends sit in front and back: half of their thickness (common practice).</summary>
    public Length Rabbet => Length.FromTicks(Thick.Ticks / 2);

    public static BoxSizes? Read(NodeReader members, Outside outside)
    {
        var (side, bottom, lid) = (members.Role("side"), members.Role("bottom"), members.MaybeRole("lid"));
        var (groove, up) = (members.Length("groove").Value, members.Length("bottom_height").Value);
        var (front, back) = (members.Length("front_lower").Value, members.Length("back_lower").Value);
        var overhang = lid is null ? Length.Zero : members.Length("overhang").Value;
        var slots = members.Choice("handles") == "slots";
        var edge = EdgeAsked.Read(members, side);
        if (members.Failed)
            return null;
        var whole = Box.Between(
            overhang,
            overhang,
            Length.Zero,
            outside.Width.Value - overhang,
            outside.Depth.Value,
            outside.Height.Value - (lid?.Thickness ?? Length.Zero)
        );
        var sizes = new BoxSizes(side, bottom, lid, whole, groove, up, front, back, slots) { Edge = edge };
        sizes.Check(members);
        return members.Failed ? null : sizes;
    }

    /// <summary>Height of a side that is lower than the ends.</summary>
    public Working<Length> Lower(string name, Length lower) =>
        lower == Length.Zero
            ? Working.Given("Height of the box", Whole.Dz)
            : Working.Of(
                name,
                Whole.Dz - lower,
                "{height} − {lower}",
                Working.Geometry,
                ("height", Working.Given("Height of the ends", Whole.Dz)),
                ("lower", Working.Given("lower by", lower))
            );

    /// <summary>Extent of the bottom across one way of the box.</summary>
    public Working<Length> Between(string name, Length whole) =>
        Working.Of(
            name,
            whole - ((Thick - Groove) * 2),
            "{whole} − 2 × {side} + 2 × {groove}",
            Working.Geometry,
            ("whole", Working.Given("Box", whole)),
            ("side", Working.Given("side", Thick)),
            ("groove", Working.Given("groove", Groove))
        );

    private void Check(NodeReader members)
    {
        string Text(Length length) => LengthFormat.WithUnit(length, members.Unit);
        // Past the rabbet nothing is left of the corner, and more than half weakens the sides.
        if (!Groove.IsPositive || Groove > Rabbet)
            members.Fail(
                "groove",
                Text(Groove),
                $"must be more than zero and at most half of the side, {Text(RuleMarks.Down(Rabbet, members.Unit))}"
            );
        var least = BottomZ + Bottom.Thickness;
        if (Length.Max(FrontLower, BackLower) + least >= Whole.Dz)
            members.Fail(
                BackLower > FrontLower ? "back_lower" : "front_lower",
                Text(Length.Max(FrontLower, BackLower)),
                "leaves nothing of the side above the bottom: make the box higher, or lower it less"
            );
        if (HasSlots && Whole.Dz < LeastSlotted)
            members.Fail("handles", "slots", $"don't fit in ends of {Text(Whole.Dz)}: at least {Text(LeastSlotted)} high");
        if (Lid is not null && BackLower.IsPositive)
            members.Fail("back_lower", Text(BackLower), "leaves the lid nothing to hang on: a box with a lid needs a full back");
    }
}
