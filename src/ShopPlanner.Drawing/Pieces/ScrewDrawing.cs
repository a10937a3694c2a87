using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Hardware;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Screws in a joint's section: through the thinner part, from a pocket, in a slot.</summary>
internal static class ScrewDrawing
{
    // A pocket slants by 15°, its drill is 3/8 in (common practice of pocket hole jigs).
    private const double Slant = 15 * Math.PI / 180,
        PocketRadius = 9.525 / 2;

    // Counterbore, wood left above it, and play to each side in a slot (common practice).
    private const double Bore = 9.525,
        Left = 25.4,
        Play = 3.2;

    /// <summary>Through the part that is thinner in the screw's direction into the other.</summary>
    public static string Through(JointScene scene, JointPage page)
    {
        var (from, into) = (scene.From.Box.Extent(scene.Along), scene.Into.Box.Extent(scene.Along));
        var nearIsInto = into <= from;
        var (near, far) = nearIsInto ? (into, from) : (from, into);
        var (choice, refused) = ScrewChoice.Of(Working.Given("near", near), Working.Given("into", far), ScrewJoint.Face);
        if (choice is null)
            return $"No common wood screw fits: a piece of {Figure(near, scene)} {refused!.Reason}.";
        var toward = nearIsInto ? -scene.Toward : scene.Toward;
        var head = scene.Contact - (toward * PieceScale.Mm(near));
        page.Screw(
            head,
            scene.Meeting.Middle,
            toward,
            0,
            PieceScale.Mm(choice.Length.Value),
            PieceScale.Mm(choice.Gauge.Diameter)
        );
        page.Measure(
            JointDrawing.Ordered(scene.Contact, scene.Contact + (toward * PieceScale.Mm(choice.Penetration.Value))),
            Figure(choice.Penetration.Value, scene)
        );
        var what = nearIsInto ? scene.IntoPart.Name : scene.FromPart.Name;
        return $"#{choice.Gauge.Gauge} × {Size(choice.Length.Value, scene)} screw through the "
            + $"{what.ToLowerInvariant()}: clearance hole there, pilot hole beyond.";
    }

    /// <summary>From a pocket in the face of the one that nobody sees into the other.</summary>
    public static string Pocket(JointScene scene, JointPage page)
    {
        var (choice, refused) = ScrewChoice.Of(
            Working.Given("near", scene.From.Box.Extent(scene.Across)),
            Working.Given("into", scene.Into.Box.Extent(scene.Along)),
            ScrewJoint.Pocket
        );
        if (choice is null)
            return $"No common pocket screw fits: it {refused!.Reason}.";
        var (toward, side) = (scene.Toward, HiddenSide(scene));
        var (length, beyond) = (PieceScale.Mm(choice.Length.Value), PieceScale.Mm(choice.Penetration.Value));
        var (da, db) = (toward * Math.Cos(Slant), -side * Math.Sin(Slant));
        var (a, b) = (scene.Contact - (da * (length - beyond)), scene.FromAcross.Middle - (db * (length - beyond)));
        var face = side > 0 ? scene.FromAcross.To : scene.FromAcross.From;
        (double A, double B) Shoulder(double off) => (a - (db * off), b + (da * off));
        (double A, double B) Mouth(double off)
        {
            var (sa, sb) = Shoulder(off);
            var back = (face - sb) / -db;
            return (sa - (da * back), face);
        }

        page.Outlined(Shoulder(-PocketRadius), Shoulder(PocketRadius), Mouth(PocketRadius), Mouth(-PocketRadius));
        page.Screw(a, b, da, db, length, PieceScale.Mm(choice.Gauge.Diameter));
        return $"{Size(choice.Length.Value, scene)} pocket screw from {FaceName(scene, side)} of the "
            + $"{scene.FromPart.Name.ToLowerInvariant()}.";
    }

    /// <summary>From below in a slot, so that a solid top may move across its grain.</summary>
    public static string Slotted(JointScene scene, JointPage page)
    {
        var (toward, contact, middle) = (scene.Toward, scene.Contact, scene.Meeting.Middle);
        var below = scene.IntoAlong.Size;
        var left = Math.Min(Left, below);
        var top = Math.Min(scene.FromAlong.Size, 40);
        var diameter = PieceScale.Mm(WoodScrews.Gauges[2].Diameter);
        var half = Math.Min((diameter / 2) + Play, scene.IntoAcross.Size / 3);
        var bored = contact + (toward * left);
        var end = contact + (toward * below);
        if (below > left)
            page.Hollow(
                JointDrawing.Ordered(bored, end),
                new(middle - Math.Max(Bore / 2, half), middle + Math.Max(Bore / 2, half))
            );
        page.Hollow(JointDrawing.Ordered(contact, bored), new(middle - half, middle + half));
        var into = top * 2 / 3;
        page.Screw(bored, middle, -toward, 0, left + into, diameter);
        page.Measure(
            JointDrawing.Ordered(contact, contact - (toward * into)),
            Figure(Length.FromMillimetres((decimal)into), scene)
        );
        return $"The slot runs across the grain of the {scene.FromPart.Name.ToLowerInvariant()}, so that it can "
            + $"move. Put a washer under the head. Wood buttons or clips do the same (common practice).";
    }

    // Away from whoever looks at the piece: behind a front part, below a level one, inside at the sides.
    private static int HiddenSide(JointScene scene)
    {
        if (scene.Across == Axis.Z)
            return -1;
        var middle = PieceScale.Mm(scene.Piece.Outside.Extent(scene.Across)) / 2;
        return scene.FromAcross.Middle <= middle ? 1 : -1;
    }

    private static string FaceName(JointScene scene, int side) =>
        scene.Across == Axis.Z ? "the underside"
        : scene.Across == Axis.Y && side > 0 ? "the back"
        : "the inner face";

    private static string Figure(Length length, JointScene scene) => PieceScale.Figure(length, scene.Piece.Unit);

    // Screws are sold by inches; beside millimetres, the nearest whole one tells how long that is.
    private static string Size(Length screw, JointScene scene)
    {
        var inches = LengthFormat.WithUnit(screw, LengthUnit.Inch);
        return scene.Piece.Unit == LengthUnit.Inch
            ? inches
            : string.Create(CultureInfo.InvariantCulture, $"{inches} ({Math.Round(screw.ToMillimetres())} mm)");
    }
}
