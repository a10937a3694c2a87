using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Ordering;

/// <summary>The parts of an order that are made of one material.</summary>
internal sealed record MaterialNeed(StoredMaterial Material, ImmutableArray<CutPart> Parts, ImmutableArray<Guid> Projects);

/// <summary>What parts cost about, and how many strips a board is ripped into for them; zero of a sheet.</summary>
internal sealed record Purchase(Money Cost, int Strips);

/// <summary>
/// Estimates what parts cost of a material: whole boards by the length of all parts, whole sheets by their area. What is left
/// over at the end of a board is not counted: materials are compared, a plan counts.
/// </summary>
internal sealed class PurchaseEstimate(Length kerf)
{
    // How much of a sheet becomes parts (our rule; a plan fills 80 to 90 in a hundred).
    private const double Filled = 0.85;

    /// <summary>Returns the cheapest way to buy the parts of a material; null where none of its sizes will do.</summary>
    public Purchase? Of(MaterialNeed need, StoredMaterial material, IEnumerable<StoredPrice> prices) =>
        prices
            .Select(price => material.Width is { } width ? Boards(need, width, price) : Sheets(need, price))
            .OfType<Purchase>()
            .MinBy(bought => bought.Cost);

    private Purchase? Boards(MaterialNeed need, Length width, StoredPrice price)
    {
        var (longest, widest) = (need.Parts.Max(part => part.Length), need.Parts.Max(part => part.Width));
        if (longest > price.Length || widest > width)
            return null;
        var strips = (int)((width + kerf) / (widest + kerf));
        var length = need.Parts.Sum(part => (part.Length + kerf).Ticks * part.Quantity);
        return new Purchase(price.Price * Whole(length, (price.Length + kerf).Ticks * strips), strips);
    }

    private Purchase? Sheets(MaterialNeed need, StoredPrice price)
    {
        if (need.Parts.Any(part => part.Length > price.Length || part.Width > price.Width))
            return null;
        var area = need.Parts.Sum(part => Area(part.Length + kerf, part.Width + kerf) * part.Quantity);
        var sheets = (long)Math.Ceiling(area / (Area(price.Length, price.Width) * Filled));
        return new Purchase(price.Price * sheets, 0);
    }

    private static double Area(Length length, Length width) => (double)length.ToInches() * (double)width.ToInches();

    private static long Whole(long wanted, long each) => (wanted + each - 1) / each;
}
