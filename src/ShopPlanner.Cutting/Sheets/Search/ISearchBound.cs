using ShopPlanner.Cutting.Sheets.Packings;

namespace ShopPlanner.Cutting.Sheets.Search;

/// <summary>What is known of the least cost while a search goes on.</summary>
internal interface ISearchBound
{
    /// <summary>No complete packing costs less.</summary>
    long Cost { get; }

    /// <summary>No complete packing has a lower price.</summary>
    long Price { get; }

    /// <summary>Works on the bound after a meeting of the search; returns the packing, or a better one.</summary>
    Packing Advance(Packing best);
}
