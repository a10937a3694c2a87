using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Fills;

/// <summary>
/// Gives the slides of a drawer something to be screwed to, as far from its box as a slide is thick: the side of the case, a
/// filler on it where a face frame stands before it, or a rail between legs.
/// </summary>
internal static class SlideMounts
{
    // Width of a rail that carries slides of about 1 3/4 in, and the least of one (common practice).
    private static readonly Length RailWidth = Length.FromInches(2.5m);

    /// <summary>Joins a drawer's side to what carries its slide; warns where there is nothing.</summary>
    public static void Carry(DrawersAsked asked, Bay bay, Draft side, bool isRight, Builder builder)
    {
        var wall = isRight ? bay.Box.EndX : bay.Box.X;
        var plane = isRight ? side.Box.EndX + asked.Slide.Value : side.Box.X - asked.Slide.Value;
        var strip = side.Box.With(Axis.X, Length.Min(plane, wall), Length.Max(plane, wall));
        var met = Touching(strip, wall, isRight, builder);
        var carrier = met.Find(one => Covers(one.Box, strip, bay)) is { } whole
            ? plane == wall
                ? whole
                : Filler(bay, whole, strip, isRight, builder)
            : plane == wall && Flush(met, strip, bay) is { } longest
                ? longest
                : plane == wall && met.Count > 1
                    ? Rail(asked, met, strip, isRight, builder)
                    : null;
        if (carrier is not null)
            builder.Join(JointKind.Sliding, side, carrier, Axis.X);
        else
            builder.WarnOfNothing(
                side,
                isRight ? " at the right: its slide" : " at the left: its slide",
                "Use a case, or legs before and behind the drawer."
            );
    }

    private static List<Draft> Touching(Box strip, Length wall, bool isRight, Builder builder)
    {
        var beside = isRight
            ? strip.With(Axis.X, wall - Length.FromInches(1), wall)
            : strip.With(Axis.X, wall, wall + Length.FromInches(1));
        return [.. builder.Touching(beside, Axis.X, isRight).OrderBy(one => one.Box.Y)];
    }

    private static bool Covers(Box carrier, Box strip, Bay bay) =>
        carrier.Y <= Length.Max(strip.Y, bay.Box.Y) && carrier.EndY >= strip.EndY && IsHighEnough(carrier, strip);

    // Legs and what stands flush between them carry a slide together; it is told by the longest.
    private static Draft? Flush(List<Draft> met, Box strip, Bay bay)
    {
        var band = met.Where(one => IsHighEnough(one.Box, strip)).ToList();
        var reached = Length.Max(strip.Y, bay.Box.Y);
        foreach (var one in band.Where(one => one.Box.Y <= reached))
            reached = Length.Max(reached, one.Box.EndY);
        return reached >= strip.EndY && band.Count > 0 ? band.MaxBy(one => one.Box.Dy.Ticks) : null;
    }

    private static bool IsHighEnough(Box carrier, Box strip) =>
        carrier.Z <= Middle(strip) - Length.FromTicks(RailWidth.Ticks / 2)
        && carrier.EndZ >= Middle(strip) + Length.FromTicks(RailWidth.Ticks / 2);

    private static Length Middle(Box strip) => strip.Z + Length.FromTicks(strip.Dz.Ticks / 2);

    // Ripped from the face frame's board to the width that the frame stands out over the side; it lies with that width across.
    private static Draft Filler(Bay bay, Draft whole, Box strip, bool isRight, Builder builder)
    {
        var face = bay.Face ?? bay.Mid!.Material;
        var z = Middle(strip) - Length.FromTicks(face.Thickness.Ticks / 2);
        var box = strip.With(Axis.Z, z, z + face.Thickness).With(Axis.Y, Length.Max(strip.Y, bay.Box.Y), strip.EndY);
        var filler = builder.Add(new("Slide filler", "Carcass", face, box, Axis.Y, Axis.Z) { Width = FillerWidth(whole, strip) });
        builder.Join(JointKind.Glued, filler, whole, Axis.X);
        return filler;
    }

    // A mid stile stands out over both faces of its divider, a face stile over the one of its side.
    private static Working<Length> FillerWidth(Draft whole, Box strip) =>
        whole.Name == "Divider"
            ? Working.Of(
                "Filler width",
                strip.Dx,
                "({stile} − {divider}) ÷ 2",
                Working.Geometry,
                ("stile", Working.Given("Mid stile", (strip.Dx * 2) + whole.Box.Dx)),
                ("divider", Working.Given("divider", whole.Box.Dx))
            )
            : Working.Of(
                "Filler width",
                strip.Dx,
                "{stile} − {side}",
                Working.Geometry,
                ("stile", Working.Given("Face stile", strip.Dx + whole.Box.Dx)),
                ("side", Working.Given("side", whole.Box.Dx))
            );

    private static Draft? Rail(DrawersAsked asked, List<Draft> posts, Box strip, bool isRight, Builder builder)
    {
        var (front, back) = (posts[0], posts[^1]);
        var wide = Length.Min(RailWidth, asked.Front.Width ?? RailWidth);
        if (front.Box.EndY >= back.Box.Y || strip.Dz < wide)
            return null;
        var (thick, z) = (asked.Front.Thickness, Middle(strip) - Length.FromTicks(wide.Ticks / 2));
        var x = isRight ? strip.X : strip.X - thick;
        var box = Box.Between(x, front.Box.EndY, z, x + thick, back.Box.Y, z + wide);
        var rail = builder.Add(
            new("Slide rail", "Frame", asked.Front, box, Axis.Y, Axis.X)
            {
                Length = Working.Given("Between the legs", box.Dy),
                Width = Working.Given("Width of the rail", wide),
            }
        );
        builder.JoinAt(rail, box, Axis.Y, false, post => ButtJoint.Hidden(rail, post, Axis.Y), Length.Zero);
        builder.JoinAt(rail, box, Axis.Y, true, post => ButtJoint.Hidden(rail, post, Axis.Y), Length.Zero);
        return rail;
    }
}
