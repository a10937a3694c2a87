using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>A way to look at a piece.</summary>
/// <param name="Key">In the address.</param>
/// <param name="Name">As shown.</param>
public sealed record PieceView(string Key, string Name)
{
    /// <summary>Turned by hand in the browser.</summary>
    public static readonly PieceView Turned = new("turn", "3D");

    /// <summary>All views.</summary>
    public static IReadOnlyList<PieceView> All { get; } =
    [
        new("isometric", "Isometric"),
        new("front", "Front"),
        new("side", "Side"),
        new("plan", "Top"),
        new("exploded", "Exploded"),
        Turned,
    ];

    /// <summary>The view of an address; the first where it names none.</summary>
    public static PieceView Of(string? key) => All.FirstOrDefault(one => one.Key == key) ?? All[0];
}

/// <summary>A piece as the view that can be turned takes it: boxes in millimetres.</summary>
/// <param name="Size">Outside.</param>
/// <param name="Boxes">One for each copy.</param>
public sealed record SolidPiece(double[] Size, IReadOnlyList<SolidBox> Boxes)
{
    /// <summary>The piece's boxes.</summary>
    public static SolidPiece Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return new(
            Sides(piece.Outside.Dx, piece.Outside.Dy, piece.Outside.Dz),
            [.. piece.Parts.SelectMany(part => part.Copies.Select(copy => Box(part, copy)))]
        );
    }

    private static SolidBox Box(PiecePart part, PartCopy copy) =>
        new(
            copy.Mark,
            Sides(copy.Box.X, copy.Box.Y, copy.Box.Z),
            Sides(copy.Box.Dx, copy.Box.Dy, copy.Box.Dz),
            RoleTint.Of(part.Material),
            copy.ToeNotch is { } notch ? [(double)notch.Deep.ToMillimetres(), (double)notch.High.ToMillimetres()] : null
        );

    private static double[] Sides(Length x, Length y, Length z) =>
        [(double)x.ToMillimetres(), (double)y.ToMillimetres(), (double)z.ToMillimetres()];
}

/// <summary>A box of the view that can be turned.</summary>
/// <param name="Mark">Of the copy.</param>
/// <param name="At">Its corner nearest the origin.</param>
/// <param name="Size">Its extents.</param>
/// <param name="Tint">Colour <c>#RRGGBB</c>.</param>
/// <param name="Notch">How deep and how high the notch at its lower front corner is; null where there is none.</param>
public sealed record SolidBox(string Mark, double[] At, double[] Size, string Tint, double[]? Notch);
