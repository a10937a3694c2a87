using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Stores;

/// <summary>A line of a price list that was understood.</summary>
internal sealed record PriceRead(StoredMaterial Material, Length Length, Length Width, Money Price, bool InStock)
{
    /// <summary>The day it was seen; null for today.</summary>
    public DateOnly? Seen { get; init; }
}

/// <summary>Reads a line of a price list as typed.</summary>
internal sealed class PriceReader(LengthUnit unit, MaterialIndex materials)
{
    /// <summary>The line, or null with what is wrong added to the faults.</summary>
    public PriceRead? Read(PriceEdit edit, List<Fault> faults)
    {
        var before = faults.Count;
        var material = materials.FindTyped(edit.Material);
        if (material is null)
            faults.Add(materials.FaultOf(nameof(edit.Material), edit.Material));
        var length = Take(LengthText.ParsePositive(edit.Length, unit), nameof(edit.Length), faults);
        var width = ReadWidth(edit, material, faults);
        var price = Take(MoneyText.Parse(edit.Price), nameof(edit.Price), faults);
        return faults.Count > before ? null : new PriceRead(material!, length, width, price, edit.InStock);
    }

    // A board's width is its material's: one that is written must agree, or another board is meant.
    private Length ReadWidth(PriceEdit edit, StoredMaterial? material, List<Fault> faults)
    {
        var blank = edit.Width.Trim().Length == 0;
        if (blank && material is null or { Form: StockForm.Board } && blank)
            return Length.Zero;
        var width = Take(LengthText.ParsePositive(edit.Width, unit), nameof(edit.Width), faults);
        if (material is not { Form: StockForm.Board, Width: { } full })
            return width;
        if (width != full && width != Length.Zero)
            faults.Add(
                Fault.Of(
                    nameof(edit.Width),
                    edit.Width,
                    $"isn't this board's width, {LengthFormat.WithUnit(full, unit)}: leave the width blank"
                )
            );
        return Length.Zero;
    }

    private static T Take<T>(Parsed<T> parsed, string field, List<Fault> faults)
        where T : struct
    {
        if (parsed.Ok)
            return parsed.Value;
        faults.Add(parsed.Fault.At(field));
        return default;
    }
}
