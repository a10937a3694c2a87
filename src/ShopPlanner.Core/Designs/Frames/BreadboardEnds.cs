using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Breadboard ends of a solid top: a board across each end with a groove for the tongues of the strips. It keeps the top
/// flat and hides its end grain; pins in slots let the top move.</summary>
/// <param name="Material">Of the ends.</param>
/// <param name="Width">Of an end, along the top.</param>
/// <param name="Tongue">How far the strips reach into it.</param>
internal sealed record BreadboardEnds(RoleMaterial Material, Length Width, Working<Length> Tongue)
{
    // An end cut from a sheet or of no width of its own is as wide as a 1x4 (common practice).
    private static readonly Length Usual = Length.FromInches(3.5m);

    /// <summary>Reads them; null where the top has none, or after a fault.</summary>
    public static BreadboardEnds? Read(NodeReader members, RoleMaterial top, Outside outside)
    {
        if (members.MaybeRole("breadboard") is not { } material)
            return null;
        var wide = material.Width ?? Usual;
        if (material.Thickness != top.Thickness)
            members.Fail(
                "breadboard",
                material.Name,
                "isn't as thick as the top: use the same thickness, so that both lie flush"
            );
        if (wide * 4 > outside.Width.Value)
            members.Fail(
                "breadboard",
                material.Name,
                "is too wide for so short a top: use narrower boards, or leave the ends off"
            );
        var thickness = MortiseTenon.Thickness(Working.Given("top", top.Thickness), members.Unit);
        var tongue = MortiseTenon.Blind(MortiseTenon.Depth(thickness, Working.Given("end", wide)));
        if (!tongue.Value.IsPositive)
            members.Fail("breadboard", material.Name, "is too narrow for a groove: use wider boards");
        return members.Failed ? null : new(material, wide, tongue);
    }

    /// <summary>What the strips of the top fill, tongues included.</summary>
    public Box Within(Box whole) => whole.Grown(Axis.X, Tongue.Value - Width, Tongue.Value - Width);

    /// <summary>Length of the strips, tongues included.</summary>
    public Working<Length> Strip(Working<Length> whole) =>
        Working.Of(
            "Length of a strip",
            whole.Value - (Width * 2) + (Tongue.Value * 2),
            "{whole} − 2 × {end} + 2 × {tongue}",
            Working.Geometry,
            ("whole", whole),
            ("end", Working.Given("Breadboard end", Width)),
            ("tongue", Tongue)
        );

    /// <summary>Adds both ends, and joins the strips to them.</summary>
    public void Add(Box whole, Outside outside, IReadOnlyList<Draft> strips, Builder builder)
    {
        foreach (var x in new[] { whole.X, whole.EndX - Width })
        {
            var end = builder.Add(
                new("Breadboard end", "Top", Material, whole.With(Axis.X, x, x + Width), Axis.Y, Axis.Z)
                {
                    Length = outside.Depth,
                    Width = Working.Given("Width of an end", Width),
                    FacesToFinish = "all faces",
                }
            );
            foreach (var strip in strips)
                builder.Join(JointKind.Breadboard, strip, end, Axis.X, Tongue.Value);
        }

        var test = strips[0];
        var size = new Box(Length.Zero, Length.Zero, Length.Zero, Length.FromInches(12), Usual, Material.Thickness);
        for (var i = 0; i < 2; i++)
            builder.Add(
                new("Test piece for tongue and groove", "Shop aids", Material, Fitting(size), Axis.X, Axis.Z)
                {
                    Purpose = PartPurpose.Practice,
                    PracticeFor = test,
                }
            );
        builder.Steps.Add(
            "Bore for the pins through breadboard end and tongue, then lengthen all holes in the tongues but the middle one "
                + "into slots across the top."
        );
        builder.Steps.Add("Glue only the middle 3 in of each breadboard end. Drive the pins, and glue them in the end alone.");
    }

    // No wider than the board it is cut from.
    private Box Fitting(Box size) => Material.Width is { } board ? size.With(Axis.Y, Length.Zero, board) : size;
}
