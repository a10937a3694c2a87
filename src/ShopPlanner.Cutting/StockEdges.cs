namespace ShopPlanner.Cutting;

/// <summary>Edges of a board or sheet that are not square and clean yet: the saw's trim comes off each of them before anything
/// is cut there.</summary>
[Flags]
public enum StockEdges
{
    /// <summary>All edges are square and clean.</summary>
    None = 0,

    /// <summary>The end that plans measure from, where x is zero.</summary>
    Near = 1,

    /// <summary>The other end.</summary>
    Far = 2,

    /// <summary>The long edge that plans measure from, where y is zero; sheets only.</summary>
    Front = 4,

    /// <summary>The other long edge; sheets only.</summary>
    Back = 8,

    /// <summary>Both ends.</summary>
    Ends = Near | Far,

    /// <summary>All four edges of a sheet.</summary>
    All = Near | Far | Front | Back,
}
