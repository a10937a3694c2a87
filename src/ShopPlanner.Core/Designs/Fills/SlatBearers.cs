using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>
/// What carries slats that run lengthways between legs: bearers on edge from the front rail to the back rail, just inside the
/// legs and between them where the slats are long. Without them most slats would end in the air beside the legs.
/// </summary>
internal static class SlatBearers
{
    private static readonly SourceNote Practice = new(
        "Common practice: bearers at most 24 in apart under slats of 3/4 in, at least 3/4 in high for a screw",
        Certainty.CommonPractice
    );

    private static readonly Length Apart = Length.FromInches(24);
    private static readonly Length Least = Length.FromInches(0.75m);

    /// <summary>Adds them where some slat is not held at an end and there are rails below to fasten them to.</summary>
    public static void Add(RoleMaterial material, Bay bay, IReadOnlyList<Box> slats, Builder builder)
    {
        var high = Length.Min(material.Width ?? material.Thickness * 2, bay.ReachBelow - material.Thickness);
        if (high < Least || slats.All(slat => IsHeld(slat, false, builder) && IsHeld(slat, true, builder)))
            return;
        var (thick, end) = (material.Thickness, slats[0].Z);
        var free = bay.Box.Dx - (thick * 2);
        if (!free.IsPositive)
            return;
        var gaps = 1 + (int)((free - Length.FromTicks(1)) / Apart);
        var clear = Length.FromTicks((free - (thick * (gaps - 1))).Ticks / gaps);
        for (var i = 0; i <= gaps; i++)
        {
            var x = i == gaps ? bay.Box.EndX - thick : bay.Box.X + ((clear + thick) * i);
            Bearer(material, bay.Box.With(Axis.X, x, x + thick).With(Axis.Z, end - high, end), builder);
        }
    }

    private static bool IsHeld(Box slat, bool atEnd, Builder builder) => builder.Touching(slat, Axis.X, atEnd).Count > 0;

    private static void Bearer(RoleMaterial material, Box box, Builder builder)
    {
        var bearer = builder.Add(
            new("Slat bearer", "Frame", material, box, Axis.Y, Axis.X)
            {
                Length = Working.Given("Clear depth between the rails", box.Dy),
                Width = Working.Looked("Height of a bearer", box.Dz, new LengthFigure(box.Dz), Practice),
            }
        );
        foreach (var atEnd in new[] { false, true })
            if (builder.JoinAt(bearer, box, Axis.Y, atEnd, rail => ButtJoint.Hidden(bearer, rail, Axis.Y), Length.Zero) == 0)
                builder.WarnOfNothing(bearer, atEnd ? " at the back" : " in front", "Use a frame with rails there.");
    }
}
