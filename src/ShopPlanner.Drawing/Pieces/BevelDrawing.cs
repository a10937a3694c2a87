namespace ShopPlanner.Drawing.Pieces;

/// <summary>A cleat that hangs by its bevel on another one, seen from its end; the wall is behind both.</summary>
internal static class BevelDrawing
{
    public static string Draw(JointScene scene, JointPage page)
    {
        var (over, thick) = (scene.FromAlong.Shared(scene.IntoAlong), scene.Meeting);
        page.Wood(scene.IntoPart, scene.Into, scene.IntoAlong, scene.IntoAcross);
        page.Wood(scene.FromPart, scene.From, scene.FromAlong with { From = over.To }, scene.FromAcross);
        page.Tinted(scene.FromPart, (over.To, thick.From), (over.To, thick.To), (over.From, thick.To));
        page.Measure(over, PieceScale.Figure(scene.Joint.Depth, scene.Piece.Unit));
        page.Ring(scene.IntoPart, scene.Into, (scene.IntoAlong.From + over.From) / 2, thick.Middle);
        page.Ring(scene.FromPart, scene.From, (over.To + scene.FromAlong.To) / 2, thick.Middle);
        return "Both bevels are ripped at 45°. The wall's cleat has its long side toward the room.";
    }
}
