namespace ShopPlanner.Core.Workings;

/// <summary>The severity of a statement that follows from figures; ordered from the mildest.</summary>
public enum Severity
{
    /// <summary>It holds.</summary>
    Fine,

    /// <summary>Something to watch or to decide.</summary>
    Watch,

    /// <summary>It will not do.</summary>
    Fails,
}
