namespace ShopPlanner.Services.Common;

/// <summary>Where a piece of stock lies.</summary>
public enum StockPlace
{
    /// <summary>Boards and sheets on hand as bought.</summary>
    Rack,

    /// <summary>Offcuts on hand.</summary>
    Bin,
}
