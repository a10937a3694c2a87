using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>A bottom that drops in between the lower rails of a frame, flush with their upper edges, on cleats along the front
/// and back ones.</summary>
internal sealed class DropInBottom : IFill
{
    public KindInfo Info { get; } =
        new(
            "drop-in-bottom",
            "Drop-in bottom",
            "A bottom that drops in between the lower rails and rests on cleats.",
            [
                new("material", "Bottom", MemberType.Role, null),
                new("cleat", "Cleats", MemberType.Role, null),
                new("clearance", "Clearance at each edge", MemberType.Length, "1/16 in"),
            ]
        );

    public bool Closes => true;

    public Bay Build(NodeReader members, Bay bay, Builder builder)
    {
        var (material, cleat, clearance) = (members.Role("material"), members.Role("cleat"), members.Length("clearance"));
        if (members.Failed)
            return bay;
        var (wide, top) = (CleatShelf.Width(cleat), bay.Box.Z);
        var needed = material.Thickness + wide;
        if (bay.ReachBelow < needed)
        {
            builder.Warn(
                Severity.Fails,
                bay.ReachBelow.IsPositive
                    ? $"The drop-in bottom and its cleats need {Text(needed)} below the upper edge of the lower rails, which "
                        + $"have {Text(bay.ReachBelow)}. Use wider rails, narrower cleats or a thinner bottom."
                    : "There are no lower rails for a bottom to drop in between. Use a frame with rails, or remove the fill."
            );
            return bay;
        }

        // Doors may stand before it: the rails' inner face is where the bottom begins.
        var between = bay.Box.With(Axis.Y, bay.Front.EndY, bay.Box.EndY);
        var bottom = builder.Add(Bottom(material, between, top, clearance));
        var low = between.With(Axis.Z, top - needed, top - material.Thickness);
        Rest(bottom, Cleat(cleat, low.With(Axis.Y, low.Y, low.Y + cleat.Thickness)), false, builder);
        Rest(bottom, Cleat(cleat, low.With(Axis.Y, low.EndY - cleat.Thickness, low.EndY)), true, builder);
        return bay with { ReachBelow = Length.Zero };

        string Text(Length length) => LengthFormat.WithUnit(length, members.Unit);
    }

    private static Draft Bottom(RoleMaterial material, Box between, Length top, Working<Length> clearance)
    {
        var less = -clearance.Value;
        return new(
            "Bottom",
            "Shelves",
            material,
            between.Grown(Axis.X, less, less).Grown(Axis.Y, less, less).With(Axis.Z, top - material.Thickness, top),
            Axis.X,
            Axis.Z
        )
        {
            Length = Less("Length of the bottom", between.Dx, clearance),
            Width = Less("Width of the bottom", between.Dy, clearance),
            FacesToFinish = "upper face",
        };
    }

    private static Working<Length> Less(string name, Length clear, Working<Length> clearance) =>
        Working.Of(
            name,
            clear - (clearance.Value * 2),
            "{clear} − 2 × {clearance}",
            Working.Geometry,
            ("clear", Working.Given("Clear space", clear)),
            ("clearance", clearance)
        );

    private static Draft Cleat(RoleMaterial material, Box box) =>
        new("Bottom cleat", "Shelves", material, box, Axis.X, Axis.Y)
        {
            Length = Working.Given("Clear width", box.Dx),
            Width = Working.Given("Width of a cleat", box.Dz),
        };

    private static void Rest(Draft bottom, Draft cleat, bool atBack, Builder builder)
    {
        builder.Add(cleat);
        if (builder.ButtAt(cleat, Axis.Y, atBack) == 0)
            builder.WarnOfNothing(cleat, atBack ? " at the back" : " in front", "Use a frame with a rail there.");
        builder.Join(ButtJoint.Of(bottom, cleat, Axis.Z), bottom, cleat, Axis.Z);
    }
}
