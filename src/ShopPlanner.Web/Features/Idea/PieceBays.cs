using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Web.Features.Idea;

/// <summary>The bays of a piece that is worked out, and which of them has a part.</summary>
internal static class PieceBays
{
    /// <summary>The innermost bays.</summary>
    public static IEnumerable<Opening> Leaves(Piece piece) =>
        piece.Openings.Where(one => !piece.Openings.Any(other => IsWithin(other, one)));

    /// <summary>What is read aloud of each innermost bay, by its path.</summary>
    public static Dictionary<string, string> Names(Piece piece) =>
        Leaves(piece).ToDictionary(bay => bay.Path, bay => Title(bay, piece.Unit));

    /// <summary>A bay with its clear size: <c>Bay 1, 28 ½″ wide, 27″ high</c>.</summary>
    public static string Title(Opening bay, LengthUnit unit)
    {
        var (wide, high) = (LengthFormat.WithUnit(bay.Box.Dx, unit), LengthFormat.WithUnit(bay.Box.Dz, unit));
        return $"{BayWords.Name(bay.Path)}, {wide} wide, {high} high";
    }

    /// <summary>The path of the bay whose filling makes a part; null where it belongs to the frame.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="part">One of its parts.</param>
    public static string? Of(Piece piece, PiecePart part)
    {
        if (part.Copies.IsEmpty || Filling(part) is not { } fill)
            return null;
        var copy = part.Copies[0].Box;
        return piece
            .Openings.Where(bay => bay.Fills.Contains(fill) && Overlap(bay.Box, copy) > 0)
            .MaxBy(bay => Overlap(bay.Box, copy))
            ?.Path;
    }

    private static string? Filling(PiecePart part) =>
        part.Assembly switch
        {
            "Door" => "doors",
            "Drawer" => "drawers",
            "Shelves" when part.Name == "Shelf" => "adjustable-shelves",
            _ => null,
        };

    // Seen from the front, since an overlay front lies before its bay.
    private static double Overlap(Box bay, Box part)
    {
        var wide = Length.Min(bay.EndX, part.EndX) - Length.Max(bay.X, part.X);
        var high = Length.Min(bay.EndZ, part.EndZ) - Length.Max(bay.Z, part.Z);
        return wide.IsPositive && high.IsPositive ? (double)wide.Ticks * high.Ticks : 0;
    }

    private static bool IsWithin(Opening inner, Opening outer) =>
        inner.Path.StartsWith(outer.Path + ".bays.", StringComparison.Ordinal);
}
