using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Web.Features.Stock;

/// <summary>Stock on hand in plain words.</summary>
internal static class StockWords
{
    /// <summary>A board's length; a sheet's length by width.</summary>
    public static string Size(StockPiece piece, LengthUnit unit) =>
        piece.Form == StockForm.Board
            ? LengthFormat.WithUnit(piece.Length, LengthFormat.MadeIn(unit, piece.Length))
            : Size(piece.Length, piece.Width, unit);

    /// <summary>Length by width.</summary>
    public static string Size(Length length, Length width, LengthUnit unit)
    {
        var made = LengthFormat.MadeIn(unit, length, width);
        return $"{LengthFormat.WithUnit(length, made)} × {LengthFormat.WithUnit(width, made)}";
    }

    /// <summary>What an entry says.</summary>
    public static string Of(StockEntryKind kind) =>
        kind switch
        {
            StockEntryKind.Bought => "Bought",
            StockEntryKind.Logged => "Written down",
            StockEntryKind.Binned => "Put in the bin after cutting",
            StockEntryKind.Corrected => "Measured anew",
            StockEntryKind.Cut => "Cut up",
            StockEntryKind.Discarded => "Thrown away",
            _ => "Taken back",
        };
}
