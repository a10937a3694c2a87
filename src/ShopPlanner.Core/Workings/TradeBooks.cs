namespace ShopPlanner.Core.Workings;

/// <summary>Trade books in the public domain that many notes cite: title, part and year, as a reader can look them up.</summary>
internal static class TradeBooks
{
    /// <summary>W. Noyes.</summary>
    public const string Handwork = "Handwork in Wood (1910)";

    /// <summary>E. W. Foster.</summary>
    public const string Carpentry = "Carpentry and Woodwork (1911)";

    /// <summary>H. H. Windsor.</summary>
    public const string Mission1 = "Mission Furniture, part 1 (1909)";

    /// <summary>H. H. Windsor.</summary>
    public const string Mission2 = "Mission Furniture, part 2 (1910)";

    /// <summary>H. H. Windsor.</summary>
    public const string Mission3 = "Mission Furniture, part 3 (1912)";
}
