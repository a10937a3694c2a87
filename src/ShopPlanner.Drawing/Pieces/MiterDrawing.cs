namespace ShopPlanner.Drawing.Pieces;

/// <summary>The corner of a mitered frame, seen on its face.</summary>
internal static class MiterDrawing
{
    // How much of both parts is shown beside the corner, in widths.
    private const double Shown = 1.2;

    /// <summary>What is shown along and across the joint.</summary>
    public static (Stretch Along, Stretch Across) Window(JointScene scene)
    {
        var (tip, more) = (Tip(scene), scene.Depth * Shown);
        var along = JointDrawing.Ordered(scene.Contact - (scene.Toward * more), tip);
        var across = scene.FromAcross;
        return (along, IsOutsideAbove(scene) ? across with { From = across.From - more } : across with { To = across.To + more });
    }

    /// <summary>Draws it, and says what to know.</summary>
    public static string Draw(JointScene scene, JointPage page)
    {
        var (contact, tip) = (scene.Contact, Tip(scene));
        var body = scene.Toward > 0 ? scene.FromAlong with { To = contact } : scene.FromAlong with { From = contact };
        page.Wood(scene.IntoPart, scene.Into, scene.IntoAlong, scene.IntoAcross);
        page.Wood(scene.FromPart, scene.From, body, scene.FromAcross);
        var (outside, inside) = IsOutsideAbove(scene)
            ? (scene.FromAcross.To, scene.FromAcross.From)
            : (scene.FromAcross.From, scene.FromAcross.To);
        page.Tinted(scene.FromPart, (contact, inside), (contact, outside), (tip, outside));
        page.Tinted(scene.IntoPart, (contact, inside), (tip, inside), (tip, outside));
        page.Measure(JointDrawing.Ordered(contact, tip), PieceScale.Figure(scene.Joint.Depth, scene.Piece.Unit));
        var middle = scene.FromAcross.Middle;
        page.Ring(scene.FromPart, scene.From, contact - (scene.Toward * scene.Depth / 2), middle);
        page.Ring(scene.IntoPart, scene.Into, (contact + tip) / 2, inside + ((inside - outside) / 2));
        return "Cut both ends at 45°, opposite parts to one length at a stop. A spline across the corner holds it.";
    }

    private static double Tip(JointScene scene) => scene.Contact + (scene.Toward * scene.Depth);

    // The part that takes the other ends where the other one's outer edge is.
    private static bool IsOutsideAbove(JointScene scene) => scene.FromAcross.Middle > scene.IntoAcross.Middle;
}
