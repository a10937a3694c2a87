using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Judging;

/// <summary>Parts that no stock is long or wide enough for.</summary>
internal static class StockJudging
{
    public static IEnumerable<PieceWarning> Of(Piece piece, IReadOnlyDictionary<string, LargestStock> stock) =>
        piece
            .Parts.Where(one => one.Purpose == PartPurpose.Member)
            .SelectMany(part => Of(part, Largest(part.Material, stock), piece.Unit));

    // What stores usually stock: a start until the shop's own stores say.
    private static LargestStock? Largest(RoleMaterial material, IReadOnlyDictionary<string, LargestStock> stock)
    {
        if (material.Id is not { } id)
            return null;
        if (stock.TryGetValue(id, out var own))
            return own;
        if (MaterialCatalogue.StoreMaterials.FirstOrDefault(one => one.Id == id) is not { } usual)
            return null;
        if (!usual.Lengths.IsEmpty)
            return new(usual.Lengths.Max(), usual.Width ?? Length.Zero);
        return usual.Sizes.IsEmpty ? null : new(usual.Sizes.Max(one => one.Length), usual.Sizes.Max(one => one.Width));
    }

    private static IEnumerable<PieceWarning> Of(PiecePart part, LargestStock? stock, LengthUnit unit)
    {
        if (
            part.Material is { Form: MaterialForm.Board, Width: { } board }
            && part.RoughWidth > board
            && part.Width.Value <= board
        )
            yield return Wide(part, board, unit);
        if (stock is null || Fits(part, stock))
            yield break;
        yield return part.RoughLength > stock.Length
            ? new(
                Severity.Fails,
                $"{part.Name} is longer than any {part.Material.Name} sold, {Text(stock.Length, unit)}. "
                    + $"Choose a smaller size, or join it from two.",
                part.Id,
                part.Length
            )
            : new(
                Severity.Fails,
                $"{part.Name} is wider than any {part.Material.Name} sold, {Text(stock.Width, unit)}. "
                    + $"Choose a smaller size, or join it from two.",
                part.Id,
                part.Width
            );
    }

    // A board that is too narrow is told by the other warning; here only its length counts.
    private static bool Fits(PiecePart part, LargestStock stock) =>
        part.Material.Form == MaterialForm.Board
            ? part.RoughLength <= stock.Length
            : (part.RoughLength <= stock.Length && part.RoughWidth <= stock.Width)
                || (!part.GrainMatters && part.RoughLength <= stock.Width && part.RoughWidth <= stock.Length);

    // A part that is itself wider than its board the piece tells; here there is only no room for what is trimmed.
    private static PieceWarning Wide(PiecePart part, Length board, LengthUnit unit) =>
        new(
            Severity.Fails,
            $"{part.Name} is cut {Text(part.RoughWidth, unit)} wide to trim later, but its board is "
                + $"{Text(board, unit)} wide. Use a smaller allowance, or a wider board.",
            part.Id,
            part.Width
        );

    private static string Text(Length length, LengthUnit unit) => LengthFormat.WithUnit(length, unit);
}
