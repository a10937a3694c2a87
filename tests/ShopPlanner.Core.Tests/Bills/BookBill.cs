using System.Globalization;
using ShopPlanner.Core.Bills;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Bills;

/// <summary>A stock bill of a book.</summary>
/// <param name="Title">Of the piece of furniture.</param>
/// <param name="Text">The bill.</param>
/// <param name="Pieces">What it means: <c>4 posts: 2 x 2 x 54, oak</c>.</param>
internal sealed record BookBill(string Title, string Text, string[] Pieces)
{
    public static IEnumerable<BookBill> All => BookBills.All.Concat(LongBookBills.All);

    /// <summary>A part in the form in which <see cref="Pieces"/> has it.</summary>
    public static string Piece(BillPart part)
    {
        var count = part.Count?.ToString(CultureInfo.InvariantCulture) ?? "?";
        var material = part.Material is null ? "" : ", " + part.Material;
        var unit = part.Unit;
        var (thickness, width, length) = part.Size;
        return $"{count} {part.Name}: {Side(thickness, unit)} x {Side(width, unit)} x {Side(length, unit)}{material}";
    }

    private static string Side(Length? side, LengthUnit unit) => side is { } length ? LengthFormat.Exact(length, unit) : "?";
}
