using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Web.Features.Stock;

/// <summary>Stock on hand in words.</summary>
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

    /// <summary>Returns what an entry says: what happened, and why where that is not said already.</summary>
    public static string Said(StockEntry entry) =>
        entry.Kind switch
        {
            StockEntryKind.Undone => $"Undone: {After(entry.Reason)}",
            StockEntryKind.Inspected => char.ToUpperInvariant(entry.Reason[0]) + entry.Reason[1..],
            StockEntryKind.Logged or StockEntryKind.Corrected => Of(entry.Kind),
            StockEntryKind.Bought or StockEntryKind.Cut or StockEntryKind.Binned or StockEntryKind.Taken => Of(entry.Kind)
                + ForWhat(entry.Reason),
            _ => IsSaid(entry) ? Of(entry.Kind) : $"{Of(entry.Kind)}: {entry.Reason}",
        };

    private static bool IsSaid(StockEntry entry) =>
        entry.Reason.Length == 0 || string.Equals(entry.Reason, Of(entry.Kind), StringComparison.OrdinalIgnoreCase);

    // "cut for Plant stand": the kind says the first word.
    private static string ForWhat(string reason) =>
        reason.IndexOf(" for ", StringComparison.Ordinal) is >= 0 and var at ? reason[at..] : "";

    // "undone: thrown away"; earlier versions had another word for a size that was measured again.
    private static string After(string reason)
    {
        var what = reason[(reason.IndexOf(": ", StringComparison.Ordinal) is >= 0 and var at ? at + 2 : 0)..];
        return what.StartsWith("measured ", StringComparison.Ordinal) ? "measured again" : what;
    }

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
            StockEntryKind.Inspected => "Looked over",
            StockEntryKind.Taken => "Taken out",
            StockEntryKind.PutBack => "Put back",
            _ => "Undone",
        };
}
