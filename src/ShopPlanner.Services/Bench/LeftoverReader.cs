using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Services.Stock;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Bench;

/// <summary>Where a leftover was in what it was cut from.</summary>
/// <param name="Area">As planned, or as the cuts that were made left it.</param>
/// <param name="IsTrimmed">Whether edges as bought are left out of it.</param>
internal sealed record LeftoverArea(StockArea Area, bool IsTrimmed);

/// <summary>Reads leftovers as measured. What the saw really left is believed, short of what no saw can leave.</summary>
internal static class LeftoverReader
{
    private const int MostLeftovers = 50;

    /// <summary>Sizes of those that are kept, and where they were; null where nobody knows.</summary>
    public static List<(Length Length, Length Width, LeftoverArea? Area)> Read(
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
        var kept = new List<(Length, Length, LeftoverArea?)>();
        for (var i = 0; i < leftovers.Count; i++)
            if (leftovers[i].Keep)
            {
                var (length, width) = Size(leftovers[i], $"leftovers[{i}]", stock, material, unit, faults);
                kept.Add((length, width, Area(leftovers[i], layout, stock, faults)));
            }

        return kept;
    }

    private static LeftoverArea? Area(MeasuredLeftover leftover, Layout layout, CutStock stock, List<Fault> faults)
    {
        if (leftover.Index >= 0 && leftover.Index < layout.Leftovers.Length)
        {
            var planned = layout.Leftovers[leftover.Index];
            return new(new(planned.X, planned.Y, planned.Dx, planned.Dy), IsTrimmed: true);
        }

        if (leftover.From is not { } area)
            return null;
        if (IsWithin(area, stock))
            return new(area, IsTrimmed: false);
        faults.Add(new Fault("leftovers", "", "name a part that the stock does not have: open the page again and repeat"));
        return null;
    }

    private static bool IsWithin(StockArea area, CutStock stock) =>
        area.X >= Length.Zero
        && area.Y >= Length.Zero
        && area.Dx.IsPositive
        && area.Dy.IsPositive
        && area.X <= stock.Length - area.Dx
        && area.Y <= stock.Width - area.Dy;

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
