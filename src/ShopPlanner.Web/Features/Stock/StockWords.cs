using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Web.Features.Stock;

/// <summary>Stock on hand in words.</summary>
internal static class StockWords
{
    // What stands in the ledger where nobody gave a reason: the kind of the entry says it already.
    private static readonly HashSet<string> Usual =
    [
        "bought",
        "found in the shop",
        "measured anew",
        "measured again",
        "thrown away",
    ];

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

    /// <summary>Returns what an entry says: what happened, and why where that is not said already.</summary>
    public static string Said(StockEntry entry) =>
        entry.Kind == StockEntryKind.Undone ? $"Undone: {After(entry.Reason)}"
        : entry.Reason.Length == 0 || Usual.Contains(entry.Reason) ? Of(entry.Kind)
        : $"{Of(entry.Kind)}: {entry.Reason}";

    // "undone: thrown away"
    private static string After(string reason) =>
        reason[(reason.IndexOf(": ", StringComparison.Ordinal) is >= 0 and var at ? at + 2 : 0)..];

    /// <summary>Returns what happened.</summary>
    public static string Of(StockEntryKind kind) =>
        kind switch
        {
            StockEntryKind.Bought => "Bought",
            StockEntryKind.Logged => "Added",
            StockEntryKind.Binned => "Put in the bin after cutting",
            StockEntryKind.Corrected => "Measured again",
            StockEntryKind.Cut => "Cut up",
            StockEntryKind.Discarded => "Thrown away",
            StockEntryKind.Returned => "Returned",
            _ => "Undone",
        };
}
