using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Draws a joint: the two parts cut through, what holds them, and the depth with its figure.</summary>
internal sealed class JointDrawing
{
    // How much of a part is drawn beside the joint, in thicknesses, and the room that a mortise is cut deeper (common practice:
    // 1/16 in).
    private const double Shown = 2.6,
        ShownAcross = 1.35,
        Spare = 1.6,
        Pocket = 4;

    private readonly JointScene scene;
    private readonly JointPage page;

    public JointDrawing(JointScene scene, double width, double height)
    {
        this.scene = scene;
        var (along, across) = scene.Joint.Kind switch
        {
            JointKind.Hinged when !IsLid(scene) => HingeDrawing.Window(scene),
            JointKind.Sliding => SlideDrawing.Window(scene),
            JointKind.Miter => MiterDrawing.Window(scene),
            _ => Window(),
        };
        page = new JointPage(scene, along, across, width, height);
    }

    /// <summary>The shapes, and what to know beside them.</summary>
    public (ImmutableArray<Shape> Shapes, string Note) Draw()
    {
        var note = scene.Joint.Kind switch
        {
            JointKind.Hinged when !IsLid(scene) => HingeDrawing.Draw(scene, page),
            JointKind.Sliding => SlideDrawing.Draw(scene, page),
            JointKind.Dovetail => DovetailDrawing.Draw(scene, page),
            JointKind.Beveled => BevelDrawing.Draw(scene, page),
            JointKind.Miter => MiterDrawing.Draw(scene, page),
            _ => scene.Joint.Depth.IsPositive ? LetIn() : Butt(),
        };
        return (page.Shapes, note);
    }

    // A lid lies on what it hangs from: its hinges take no cup.
    private static bool IsLid(JointScene scene) => scene.Along == Axis.Z;

    private double Thick =>
        Math.Max(Math.Min(scene.FromAlong.Size, scene.FromAcross.Size), Math.Min(scene.IntoAlong.Size, scene.IntoAcross.Size));

    private (Stretch Along, Stretch Across) Window()
    {
        var (t, contact) = (Thick, scene.Contact);
        var outside = scene.Toward > 0 ? contact - scene.FromAlong.From : scene.FromAlong.To - contact;
        var isScrewed = scene.Joint.Kind == JointKind.Screwed;
        var near = Math.Min(scene.FromAlong.Size, scene.IntoAlong.Size);
        var isPocket = scene.Joint.Kind == JointKind.PocketScrew;
        var before =
            isPocket ? Math.Min(outside, Pocket * scene.FromAcross.Size)
            : isScrewed && outside <= near ? outside
            : Limited(outside, t);
        var behind = isScrewed && scene.IntoAlong.Size <= near ? near : Limited(scene.IntoAlong.Size, t);
        var along =
            scene.Toward > 0 ? new Stretch(contact - before, contact + behind) : new Stretch(contact - behind, contact + before);
        if (scene.Joint.Kind == JointKind.Dovetail)
            return (along, scene.Meeting);
        var middle =
            scene.Joint.Kind == JointKind.Slotted ? scene.IntoAcross.Shared(scene.FromAcross).Middle : scene.Meeting.Middle;
        var all = new Stretch(
            Math.Min(scene.FromAcross.From, scene.IntoAcross.From),
            Math.Max(scene.FromAcross.To, scene.IntoAcross.To)
        );
        return (along, all.Shared(new(middle - (ShownAcross * t), middle + (ShownAcross * t))));
    }

    // A part not much longer than what is shown of it is shown whole.
    private static double Limited(double size, double thick) =>
        size <= 0 ? thick
        : size < (Shown + 1.4) * thick ? size
        : Shown * thick;

    private string LetIn()
    {
        var (contact, toward, tongue) = (scene.Contact, scene.Toward, scene.Tongue);
        var tip = contact + (toward * scene.Depth);
        var isTenon = scene.Joint.Kind == JointKind.MortiseAndTenon;
        page.Wood(scene.IntoPart, scene.Into, scene.IntoAlong, scene.IntoAcross);
        if (isTenon)
            page.Hollow(Ordered(contact, tip + (toward * Spare)), tongue);
        var body = toward > 0 ? new Stretch(scene.FromAlong.From, contact) : new Stretch(contact, scene.FromAlong.To);
        if (scene.HasShoulders)
        {
            page.Wood(scene.FromPart, scene.From, body, scene.FromAcross);
            page.Wood(scene.FromPart, scene.From, Ordered(contact, tip), tongue);
            var hair = 1.2 / page.Of(1);
            page.Add(
                new Patch(
                    Fill.Wood,
                    page.At(new(contact - hair, contact + hair), new(tongue.From + (hair / 2), tongue.To - (hair / 2))),
                    RoleTint.Of(scene.FromPart.Material)
                )
            );
        }
        else
            page.Wood(
                scene.FromPart,
                scene.From,
                toward > 0 ? body with { To = tip } : body with { From = tip },
                scene.FromAcross
            );

        var bottom = tip + (toward * PieceScale.Mm(scene.Joint.Clearance));
        if (scene.Joint.Clearance.IsPositive)
            page.Hollow(Ordered(tip, bottom), tongue);
        Rings(scene.Depth);
        page.Measure(Ordered(contact, bottom), PieceScale.Figure(scene.Joint.Depth + scene.Joint.Clearance, scene.Piece.Unit));
        if (scene.IsTongueKnown)
            page.MeasureAcross(tongue, PieceScale.Figure(Length.FromMillimetres((decimal)tongue.Size), scene.Piece.Unit));
        return LetInNote(isTenon);
    }

    private string LetInNote(bool isTenon) =>
        NoteOf(scene.Joint.Kind) is { } note ? note
        : scene.Joint.Clearance.IsPositive
            ? $"Cut the groove as deep as shown: the panel goes in {PieceScale.Figure(scene.Joint.Depth, scene.Piece.Unit)} "
                + $"{Figures.UnitName(scene.Piece.Unit)}, the rest is its room to move."
        : isTenon
            ? "The tenon is about a third as thick as its part, the mortise 1⁄16 in (2 mm) deeper than it is long "
                + "(common practice)."
        : scene.IsTongueKnown ? "Cut it to the thickness you measure on your own stock, not to its nominal size."
        : "The tongue is about a third as thick as its part (common practice).";

    private static string? NoteOf(JointKind kind) =>
        kind switch
        {
            JointKind.HalfLap => "Cut away half the thickness of each part, so that the faces come out flush.",
            JointKind.Bridle => "The tenon is about a third as thick as its part, the slot open at the end (common practice).",
            JointKind.Breadboard =>
                "Glue only the middle. The outer pins go through slots in the tongue, so that the top can move.",
            JointKind.SlidingGroove =>
                "Cut the grooves a little wider than the door is thick, the upper one deep enough to lift the door out.",
            JointKind.Pinned => "Hold the strip with brads alone, without glue, so that the glass can come out again.",
            _ => null,
        };

    private string Butt()
    {
        page.Wood(scene.IntoPart, scene.Into, scene.IntoAlong, scene.IntoAcross);
        page.Wood(scene.FromPart, scene.From, scene.FromAlong, scene.FromAcross);
        var note = scene.Joint.Kind switch
        {
            JointKind.Screwed => ScrewDrawing.Through(scene, page),
            JointKind.PocketScrew => ScrewDrawing.Pocket(scene, page),
            JointKind.Slotted => ScrewDrawing.Slotted(scene, page),
            JointKind.Dowel => DowelDrawing.Draw(scene, page),
            JointKind.Hinged when scene.FromPart.Assembly == "Door" =>
                "One leaf of the hinge is let into the edge of the flap, one into what it hangs from.",
            JointKind.Hinged => "One leaf of the hinge lies on the edge below, one under the lid.",
            JointKind.Bolted => "Bore both parts with one template, or while they are clamped together.",
            _ => "",
        };
        Rings(0);
        return note;
    }

    // Each ring in the part, clear of the joint and of what holds it.
    private void Rings(double depth)
    {
        var (ring, toward) = (RingMark.HeightOf(JointPage.Type) / page.Of(1), scene.Toward);
        var (along, across) = (page.Along, page.Across);
        var body = (
            toward > 0 ? new Stretch(scene.FromAlong.From, scene.Contact) : new Stretch(scene.Contact, scene.FromAlong.To)
        ).Shared(along);
        var into = (
            toward > 0
                ? scene.IntoAlong with
                {
                    From = scene.Contact + depth,
                }
                : scene.IntoAlong with
                {
                    To = scene.Contact - depth,
                }
        ).Shared(along);
        page.Ring(
            scene.FromPart,
            scene.From,
            toward > 0 ? body.From + ring : body.To - ring,
            Clear(scene.FromAcross.Shared(across), ring, depth)
        );
        page.Ring(
            scene.IntoPart,
            scene.Into,
            into.Size > ring ? (toward > 0 ? into.To - (ring * 0.7) : into.From + (ring * 0.7)) : into.Middle,
            Clear(scene.IntoAcross.Shared(across), ring, depth)
        );
    }

    private double Clear(Stretch part, double ring, double depth) =>
        part.Size < ring * 3 ? part.Middle
        : part.To - scene.Meeting.To >= ring ? part.To - (ring * 0.7)
        : scene.Meeting.From - part.From >= ring ? part.From + (ring * 0.7)
        : depth > 0 || scene.Joint.Kind is JointKind.Glued or JointKind.Resting ? part.Middle
        : part.To - (ring * 0.7);

    internal static Stretch Ordered(double one, double other) => new(Math.Min(one, other), Math.Max(one, other));
}
