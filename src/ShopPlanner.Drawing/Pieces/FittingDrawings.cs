using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A dowel in both parts.</summary>
internal static class DowelDrawing
{
    private const string Beech = "#E3CDAE";

    // Wood left beyond a hole, and the least hole that is drawn (common practice).
    private static readonly Length Left = Length.FromInches(0.125m),
        Least = Length.FromInches(0.25m);

    public static string Draw(JointScene scene, JointPage page)
    {
        var (from, into) = (scene.From.Box, scene.Into.Box);
        var width = Length.Min(from.Extent(scene.Normal), into.Extent(scene.Normal));
        var thickness = Length.Min(from.Extent(scene.Across), into.Extent(scene.Across));
        if (Dowels.Rod(thickness) is not { } fits || width < Dowels.Narrowest(fits))
            return "The parts are too thin for dowels.";
        var dowels = Dowels.Of(Working.Given("thickness", thickness), Working.Given("width", width), null);
        var depth = dowels.HoleDepth.Value;
        var inThat = Length.Max(Least, Length.Min(depth, into.Extent(scene.Along) - Left));
        var shorter = depth - inThat;
        var (b, r, toward) = (scene.FromAcross.Middle, PieceScale.Mm(dowels.Diameter.Value) / 2, scene.Toward);
        var (thick, play) = (new Stretch(b - r, b + r), PieceScale.Mm(depth) - (PieceScale.Mm(dowels.DowelLength.Value) / 2));
        var (deep, ends) = (scene.Contact + (toward * PieceScale.Mm(inThat)), scene.Contact - (toward * PieceScale.Mm(depth)));
        page.Hollow(JointDrawing.Ordered(deep, ends), thick);
        var dowel = page.At(JointDrawing.Ordered(deep - (toward * play), ends + (toward * play)), thick);
        page.Add(new Patch(Fill.Wood, dowel, Beech), new Frame(Stroke.Thin, dowel));
        page.Measure(JointDrawing.Ordered(scene.Contact, deep), PieceScale.Figure(inThat, scene.Piece.Unit));
        var (count, unit) = (dowels.Places.Value.Length, scene.Piece.Unit);
        var (rod, whole) = (
            LengthFormat.WithUnit(dowels.Diameter.Value, unit),
            LengthFormat.WithUnit(dowels.DowelLength.Value - shorter, unit)
        );
        var words = FormattableString.Invariant($"{count} {(count == 1 ? "dowel" : "dowels")} {rod} × {whole} at each joint.");
        return shorter.IsPositive
            ? words
                + $" The {scene.IntoPart.Name.ToLowerInvariant()} is too thin for longer ones. The hole stops 1/8 "
                + $"in (3 mm) short of its far face."
            : words;
    }
}

/// <summary>A cup hinge, seen from above.</summary>
internal static class HingeDrawing
{
    // A cup of 35 mm, bored 12.5 mm deep (from memory), 5 mm of wood left beside it.
    private const double Cup = 35,
        Deep = 12.5,
        Edge = 5;

    public static (Stretch Along, Stretch Across) Window(JointScene scene)
    {
        var (edge, inward) = HingeEdge(scene);
        var (far, near) = (
            edge + (inward * 62),
            inward > 0 ? Math.Min(edge - 8, scene.IntoAlong.From) : Math.Max(edge + 8, scene.IntoAlong.To)
        );
        return (
            JointDrawing.Ordered(near, far),
            new(Math.Min(scene.FromAcross.From, scene.IntoAcross.From), scene.FromAcross.To + 60)
        );
    }

    public static string Draw(JointScene scene, JointPage page)
    {
        var (edge, inward) = HingeEdge(scene);
        var centre =
            edge + (inward * PieceScale.Mm(Hinges.CupCentre(Working.Given("edge", Length.FromMillimetres((decimal)Edge))).Value));
        var back = scene.FromAcross.To;
        page.Wood(scene.IntoPart, scene.Into, scene.IntoAlong, scene.IntoAcross);
        page.Wood(scene.FromPart, scene.From, scene.FromAlong, scene.FromAcross);
        if (!TakesCup(scene))
        {
            page.Ring(scene.FromPart, scene.From, edge + (inward * 54), scene.FromAcross.Middle);
            page.Ring(scene.IntoPart, scene.Into, scene.IntoAlong.Middle, scene.IntoAcross.Middle);
            return "Butt hinges: let a leaf into the door and one into what carries it, each as deep as the leaf is thick.";
        }

        page.Hollow(new(centre - (Cup / 2), centre + (Cup / 2)), new(back - Math.Min(Deep, scene.FromAcross.Size * 0.75), back));
        var face = inward > 0 ? scene.IntoAlong.To : scene.IntoAlong.From;
        page.Metal((face, back + 22), (face, back + 54), (face + (inward * 5), back + 54), (face + (inward * 5), back + 22));
        page.Metal(
            (face + (inward * 5), back + 50),
            (face + (inward * 13), back + 50),
            (centre + (inward * 9), back + 2),
            (centre + (inward * 9), back - 8),
            (centre, back - 8),
            (face + (inward * 5), back + 24)
        );
        page.Line(Stroke.Centre, (centre, scene.FromAcross.From - 2), (centre, back + 12));
        page.Measure(
            JointDrawing.Ordered(edge, centre),
            PieceScale.Figure(Length.FromMillimetres((decimal)Math.Abs(centre - edge)), scene.Piece.Unit)
        );
        page.Ring(scene.FromPart, scene.From, edge + (inward * 54), scene.FromAcross.Middle);
        page.Ring(scene.IntoPart, scene.Into, scene.IntoAlong.Middle, back + 46);
        return "Cup 35 mm, its center 22.5 mm from the door's edge when 5 mm of wood is left beside it. The hinge "
            + "maker's sheet comes first.";
    }

    // A face frame takes cup hinges with a plate of their own; a leg is too shallow for any.
    private static bool TakesCup(JointScene scene)
    {
        var isInset = scene.From.Box.EndY > scene.Into.Box.Y;
        return scene.IntoPart.Assembly == "Face frame"
            || Hinges.TakesPlate(scene.Into.Box.Dy, isInset ? scene.From.Box.EndY - scene.Into.Box.Y : Length.Zero);
    }

    // The edge of the door at which it hangs, and the direction into the door.
    private static (double Edge, int Inward) HingeEdge(JointScene scene) =>
        scene.IntoAlong.Middle < scene.FromAlong.Middle ? (scene.FromAlong.From, 1) : (scene.FromAlong.To, -1);
}

/// <summary>A drawer's slide between its side and the case, seen from the front.</summary>
internal static class SlideDrawing
{
    // A usual slide is 45 mm high (from memory).
    private const double High = 45;

    public static (Stretch Along, Stretch Across) Window(JointScene scene)
    {
        var all = new Stretch(
            Math.Min(scene.FromAlong.From, scene.IntoAlong.From),
            Math.Max(scene.FromAlong.To, scene.IntoAlong.To)
        );
        return (all, new(scene.FromAcross.Middle - (High * 0.9), scene.FromAcross.Middle + (High * 0.9)));
    }

    public static string Draw(JointScene scene, JointPage page)
    {
        var gap =
            scene.Toward > 0
                ? new Stretch(scene.FromAlong.To, scene.IntoAlong.From)
                : new Stretch(scene.IntoAlong.To, scene.FromAlong.From);
        var middle = scene.FromAcross.Middle;
        page.Wood(scene.IntoPart, scene.Into, scene.IntoAlong, scene.IntoAcross);
        page.Wood(scene.FromPart, scene.From, scene.FromAlong, scene.FromAcross);
        if (gap.Size > 0)
        {
            var (half, third) = (High / 2, gap.Size / 3);
            page.Metal(
                (gap.From, middle - half),
                (gap.From + third, middle - half),
                (gap.From + third, middle + half),
                (gap.From, middle + half)
            );
            page.Metal(
                (gap.To, middle - half),
                (gap.To - third, middle - half),
                (gap.To - third, middle + half),
                (gap.To, middle + half)
            );
            page.Hollow(new(gap.From + third, gap.To - third), new(middle - (half * 0.5), middle + (half * 0.5)));
            page.Measure(gap, PieceScale.Figure(Length.FromMillimetres((decimal)gap.Size), scene.Piece.Unit));
        }

        page.Ring(scene.FromPart, scene.From, scene.FromAlong.Middle, middle + (High * 0.6));
        page.Ring(scene.IntoPart, scene.Into, scene.IntoAlong.Middle, middle + (High * 0.6));
        return "Clearance for the slide at each side. Buy the slides before you cut the boxes: their sheet comes first.";
    }
}

/// <summary>Dovetails, seen from the side of the part that takes the other.</summary>
internal static class DovetailDrawing
{
    // Between 1 : 6, softwood, and 1 : 8, hardwood (common practice).
    private const double Slope = 1 / 7.0,
        Pitch = 35;

    public static string Draw(JointScene scene, JointPage page)
    {
        var (contact, depth, meeting) = (scene.Contact, scene.Depth * scene.Toward, scene.Meeting);
        page.Wood(scene.IntoPart, scene.Into, scene.IntoAlong, scene.IntoAcross);
        page.Wood(scene.FromPart, scene.From, scene.FromAlong, scene.FromAcross);
        var tails = Math.Clamp((int)Math.Round(meeting.Size / Pitch), 1, 12);
        var (pitch, lean) = (meeting.Size / tails, scene.Depth * Slope);
        for (var i = 0; i < tails; i++)
        {
            var (low, high) = (meeting.From + (pitch * (i + 0.2)), meeting.From + (pitch * (i + 0.8)));
            page.Line(Stroke.Outline, (contact, low - lean), (contact + depth, low + lean));
            page.Line(Stroke.Outline, (contact, high + lean), (contact + depth, high - lean));
        }

        page.Measure(JointDrawing.Ordered(contact, contact + depth), PieceScale.Figure(scene.Joint.Depth, scene.Piece.Unit));
        page.Ring(scene.FromPart, scene.From, (page.Along.From + contact) / 2, meeting.Middle);
        page.Ring(scene.IntoPart, scene.Into, (page.Along.To + contact + depth) / 2, meeting.Middle);
        return "Slope 1 : 6 in softwood, 1 : 8 in hardwood (common practice).";
    }
}
