using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Frame;

/// <summary>A place that the rail leads to.</summary>
/// <param name="Name">The name that people read.</param>
/// <param name="Link">The address.</param>
/// <param name="Picture">The icon.</param>
/// <param name="IsSeldom">Whether a phone, which has room for five, shows it under "More".</param>
internal sealed record RailPlace(string Name, string Link, string Picture, bool IsSeldom = false)
{
    /// <summary>Whether pages below the address belong to the place. Every address lies below that of Home.</summary>
    public bool HasPages => Link != Links.Home;

    /// <summary>Whether it stands only in the phone's menu: larger screens have a field for it on every page.</summary>
    public bool IsForPhone { get; init; }

    /// <summary>The places in order.</summary>
    public static IReadOnlyList<RailPlace> All { get; } =
    [
        new("Home", Links.Home, "home"),
        new("Search", Links.Search(), "search", IsSeldom: true) { IsForPhone = true },
        new("Designs", Links.Designs, "designs", IsSeldom: true),
        new("Projects", Links.Projects, "projects"),
        new("Rack & bin", Links.Stock, "rack"),
        new("Stores", Links.Stores, "stores", IsSeldom: true),
        new("Cut plans", Links.Plans, "plans"),
        new("Bench", Links.Bench, "bench"),
        new("Weekends", Links.Weekends, "weekends", IsSeldom: true),
        new("Shop book", Links.Book(), "book", IsSeldom: true),
        new("Shop math", Links.Workings, "workings", IsSeldom: true),
        new("Setup", Links.Shop, "shop", IsSeldom: true),
    ];
}
