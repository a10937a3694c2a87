using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Reads leftovers as measured. What the saw really left is believed, short of what no saw can leave.</summary>
internal static class LeftoverReader
{
    private const int MostLeftovers = 50;

    /// <summary>Sizes of those that are kept.</summary>
    public static List<(Length Length, Length Width)> Read(
        IReadOnlyList<MeasuredLeftover> leftovers,
        Layout layout,
        CutStock stock,
        StoredMaterial material,
        LengthUnit unit,
        List<Fault> faults
    )
    {
        if (leftovers.Count > MostLeftovers)
            faults.Add(new Fault("leftovers", $"{leftovers.Count}", $"are more than {MostLeftovers}"));
        var planned = leftovers.Where(leftover => leftover.Index >= 0).Select(leftover => leftover.Index).ToList();
        if (planned.Any(index => index >= layout.Leftovers.Length) || planned.Distinct().Count() < planned.Count)
            faults.Add(new Fault("leftovers", "", "name a leftover that this layout does not have, or the same one twice"));
        var kept = new List<(Length, Length)>();
        for (var i = 0; i < leftovers.Count; i++)
            if (leftovers[i].Keep)
                kept.Add(Size(leftovers[i], $"leftovers[{i}]", stock, material, unit, faults));
        return kept;
    }

    private static (Length Length, Length Width) Size(
        MeasuredLeftover leftover,
        string field,
        CutStock stock,
        StoredMaterial material,
        LengthUnit unit,
        List<Fault> faults
    )
    {
        var found = new List<Fault>();
        var blank = leftover.Width.Trim().Length == 0 && material.Form == StockForm.Board;
        var (length, width) = PieceReader.Sizes(
            material,
            leftover.Length,
            blank ? LengthFormat.Exact(stock.Width, unit) : leftover.Width,
            unit,
            found
        );
        if (found.Count == 0 && !Fits(length, width, stock, material.Form))
            found.Add(
                Fault.Of(
                    "Length",
                    $"{leftover.Length} × {leftover.Width}",
                    $"is larger than what it was cut from, {Say(stock.Length, unit)} × {Say(stock.Width, unit)}"
                )
            );
        faults.AddRange(found.Select(fault => fault.At($"{field}.{fault.Field}")));
        return (length, width);
    }

    // A sheet's leftover may be measured along its own longer side.
    private static bool Fits(Length length, Length width, CutStock stock, StockForm form)
    {
        if (form == StockForm.Board)
            return length <= stock.Length && width <= stock.Width;
        return Length.Max(length, width) <= Length.Max(stock.Length, stock.Width)
            && Length.Min(length, width) <= Length.Min(stock.Length, stock.Width);
    }

    private static string Say(Length length, LengthUnit unit) => LengthFormat.WithUnit(length, unit);
}
