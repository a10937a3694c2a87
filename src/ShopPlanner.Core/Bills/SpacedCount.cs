using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>A line that begins <c>4 3/4 x 3 x 22</c> and tells no count: four pieces of 3/4, or one of 4 3/4.</summary>
internal static class SpacedCount
{
    /// <summary>Returns the entry read in the likelier way, with a doubt that names the other.</summary>
    public static BillEntry Split(BillEntry entry)
    {
        var first = entry.Sides[0];
        var count = first.Number.Before ?? 0;
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{first.Number.Numerator}/{first.Number.Denominator}");
        var doubted = entry.Doubt($"‘{first.Number.Plain}’ may be {count} pieces of {fraction}, or one size.");
        if (count == 0 || IsOrdered(entry))
            return doubted;
        var side = first with { Plain = fraction + first.Plain[first.Number.Plain.Length..] };
        return doubted with { Count = count, Sides = entry.Sides.SetItem(0, side) };
    }

    // Thickness, width and length rise, or fall, where the figures are right as they stand.
    private static bool IsOrdered(BillEntry entry)
    {
        var sides = entry.Sides.Select(side => LengthText.Parse(side.Plain, LengthUnit.Inch)).Where(side => side.Ok).ToList();
        var steps = sides.Zip(sides.Skip(1), (a, b) => a.Value.CompareTo(b.Value)).ToList();
        return steps.TrueForAll(step => step <= 0) || steps.TrueForAll(step => step >= 0);
    }
}
