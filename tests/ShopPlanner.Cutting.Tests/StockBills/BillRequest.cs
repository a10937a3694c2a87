using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.StockBills;

/// <summary>How the wide pieces of a bill are come by.</summary>
public enum WidePieces
{
    /// <summary>From the boards like all others, of which none is wide enough.</summary>
    FromBoards,

    /// <summary>Glued up from strips of a board's width or less.</summary>
    FromStrips,

    /// <summary>From sheets, where there is one as thick.</summary>
    FromSheets,
}

/// <summary>
/// A bill as a cut request: each wood and thickness from boards 12 in wide by name, of the least nominal thickness that planes to it, each
/// board priced at its board feet, so that the cost is the board feet bought.
/// </summary>
internal static class BillRequest
{
    private static readonly NominalSize Twelve = SoftwoodSizes.Widths.Single(width => width.Nominal == Length.FromInches(12));
    private static readonly ImmutableArray<int> Feet = [4, 8, 10, 12];

    public static Length WidestBoard => Twelve.Dry;

    public static CutRequest Of(StockBill bill, WidePieces wide)
    {
        var parts = bill
            .Pieces.Select(
                (piece, i) => wide == WidePieces.FromStrips && piece.Width > WidestBoard ? Strips(piece, i) : Part(piece, i, wide)
            )
            .ToList();
        var materials = parts.Select(part => part.Material).Distinct().ToList();
        return new(
            LengthUnit.Inch,
            new(Length.FromInches(0, 1, 8), Length.FromInches(0, 1, 2), Length.FromInches(0, 1, 4)),
            new(Length.FromInches(12), Length.FromInches(12), Length.FromInches(6)),
            [.. materials.Select(Material)],
            [.. materials.SelectMany(Stock)],
            [.. parts],
            new(5)
        );
    }

    private static CutPart Part(BillPiece piece, int i, WidePieces wide)
    {
        var sheet = wide == WidePieces.FromSheets && piece.Width > WidestBoard ? Sheet(piece.Thickness) : null;
        return new($"P{i}", piece.Name, sheet?.Id ?? Board(piece), piece.Length, piece.Width, Grain.Length, piece.Count);
    }

    // As many strips as boards are needed, each 1/8 in over for jointing its edges (common practice).
    private static CutPart Strips(BillPiece piece, int i)
    {
        var allowance = Length.FromInches(0, 1, 8);
        var strips = (int)(piece.Width / (WidestBoard - allowance)) + 1;
        var width = Length.FromTicks((piece.Width.Ticks / strips) + 1) + allowance;
        return new($"P{i}", piece.Name, Board(piece), piece.Length, width, Grain.Length, piece.Count * strips);
    }

    // The wood and the place of the thickness in the table stand in the material's id.
    private static string Board(BillPiece piece) =>
        $"{SoftwoodSizes.Thicknesses.TakeWhile(size => size.Dry < piece.Thickness).Count()}|{piece.Wood}";

    private static SheetGood? Sheet(Length thickness) =>
        MaterialCatalogue
            .SheetGoods.Where(sheet =>
                sheet.Kind == SheetKind.SoftwoodPlywood
                && LengthText.ParsePositive(sheet.Nominal, LengthUnit.Inch).Value >= thickness
            )
            .MinBy(sheet => sheet.Thickness);

    private static NominalSize? Nominal(string material) =>
        material.Split('|') is [var place, _] ? SoftwoodSizes.Thicknesses[int.Parse(place, CultureInfo.InvariantCulture)] : null;

    private static CutMaterial Material(string id) =>
        Nominal(id) is { } size
            ? new(id, StockForm.Board, size.Dry, Twelve.Dry)
            : new(id, StockForm.Sheet, MaterialCatalogue.SheetGoods.Single(sheet => sheet.Id == id).Thickness, null);

    private static IEnumerable<CutStock> Stock(string id)
    {
        if (Nominal(id) is { } size)
            return Feet.Select(feet =>
                Bought(id, $"{feet} ft of {id}", size.Nominal, new(Length.FromFeet(feet), Twelve.Nominal), Twelve.Dry)
            );
        var good = MaterialCatalogue.SheetGoods.Single(sheet => sheet.Id == id);
        var thickness = LengthText.ParsePositive(good.Nominal, LengthUnit.Inch).Value;
        return good.Sizes.Select(side => Bought(id, $"a sheet of {id}", thickness, side, side.Width));
    }

    private static CutStock Bought(string material, string id, Length thickness, SheetSize asSold, Length width)
    {
        var volume = BoardMeasure.Counted(thickness, asSold.Width, asSold.Length, 1, ThinStock.RealThickness);
        return new(id, material, asSold.Length, width, Money.From(volume.ToBoardFeet()), null, false);
    }
}
