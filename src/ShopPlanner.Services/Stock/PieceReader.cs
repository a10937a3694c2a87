using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stock;

/// <summary>Reads what a piece of stock measures, as typed.</summary>
internal static class PieceReader
{
    /// <summary>Most pieces added at once.</summary>
    public const int MostAlike = 200;

    /// <summary>Length and width; an empty width of a board is its full width.</summary>
    public static (Length Length, Length Width) Sizes(
        StoredMaterial? material,
        string length,
        string width,
        LengthUnit unit,
        List<Fault> faults
    ) => (Size("Length", length, unit, faults), Width(material, width, unit, faults));

    public static int Quantity(string text, List<Fault> faults)
    {
        if (text.Trim().Length == 0)
            return 1;
        if (
            int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var pieces)
            && pieces is >= 1 and <= MostAlike
        )
            return pieces;
        faults.Add(
            Fault.Of(
                nameof(StockAddition.Quantity),
                text,
                $"is not a number of pieces: write a whole number from 1 to {MostAlike}"
            )
        );
        return 0;
    }

    private static Length Width(StoredMaterial? material, string text, LengthUnit unit, List<Fault> faults)
    {
        var blank = text.Trim().Length == 0;
        if (blank && material is null)
            return Length.Zero;
        if (blank && material!.Width is { } full)
            return full;
        var width = Size("Width", text, unit, faults);
        if (material?.Width is { } most && width > most)
            faults.Add(
                Fault.Of("Width", text, $"is wider than the board: {material.Name} is {LengthFormat.WithUnit(most, unit)} wide")
            );
        return width;
    }

    private static Length Size(string field, string text, LengthUnit unit, List<Fault> faults)
    {
        var parsed = LengthText.ParsePositive(text, unit);
        if (parsed.Ok)
            return parsed.Value;
        faults.Add(parsed.Fault.At(field));
        return Length.Zero;
    }
}
