using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Drawings of a piece of furniture, each within a width and a height in page units.</summary>
public static class PieceDrawings
{
    private const double Apart = 0.75;

    /// <summary>Straight from the front, with dimensions.</summary>
    /// <param name="piece">What.</param>
    /// <param name="width">Most width.</param>
    /// <param name="height">Most height.</param>
    /// <param name="highlight">Mark of a copy, or letter of a part, drawn in chalk; null for none.</param>
    public static LineDrawing Front(Piece piece, double width, double height, string? highlight = null) =>
        new FlatView(piece, ViewFrom.Front, width, height, highlight).Draw("Front");

    /// <summary>Straight from the right.</summary>
    /// <inheritdoc cref="Front" path="/param"/>
    public static LineDrawing Side(Piece piece, double width, double height, string? highlight = null) =>
        new FlatView(piece, ViewFrom.Right, width, height, highlight).Draw("Side");

    /// <summary>Straight from above, the front at the foot.</summary>
    /// <inheritdoc cref="Front" path="/param"/>
    public static LineDrawing Plan(Piece piece, double width, double height, string? highlight = null) =>
        new FlatView(piece, ViewFrom.Above, width, height, highlight).Draw("Plan");

    /// <summary>Isometric, from the front, the right and above.</summary>
    /// <inheritdoc cref="Front" path="/param"/>
    public static LineDrawing Isometric(Piece piece, double width, double height, string? highlight = null) =>
        new SlantView(piece, width, height, highlight, 0).Draw("Isometric view");

    /// <summary>Isometric with the parts drawn apart, each kind with its mark.</summary>
    /// <inheritdoc cref="Front" path="/param"/>
    public static LineDrawing Exploded(Piece piece, double width, double height, string? highlight = null) =>
        new SlantView(piece, width, height, highlight, Apart).Draw("Parts drawn apart");
}
