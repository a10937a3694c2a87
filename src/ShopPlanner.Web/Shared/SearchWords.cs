using ShopPlanner.Services.Search;

namespace ShopPlanner.Web.Shared;

/// <summary>What was found in words, and where it leads.</summary>
internal static class SearchWords
{
    // The parts list shows so many rows at a time.
    private const int PageRows = 500;

    /// <summary>Returns the heading of a kind.</summary>
    public static string Of(SearchKind kind) =>
        kind switch
        {
            SearchKind.Project => "Projects",
            SearchKind.Part => "Parts",
            SearchKind.Piece => "Rack and bin",
            SearchKind.Material => "Materials",
            SearchKind.Store => "Stores",
            SearchKind.Plan => "Cut plans",
            SearchKind.Design => "Designs",
            SearchKind.Calculator => "Shop math",
            _ => "Saved figures",
        };

    /// <summary>Returns what tells a thing from others like it.</summary>
    public static string Detail(SearchHit hit) =>
        hit switch
        {
            { State: { } state } => Words.Of(state),
            { Plan: { } plan } => $"{Words.Of(plan.State)} · {Words.Day(plan.MadeUtc)} · {plan.ShortId}",
            _ => hit.Detail,
        };

    /// <summary>Returns the page of a thing. A material has none of its own: it leads to its pieces on hand, else to a store
    /// that sells it, else to the shop's materials.</summary>
    public static string Link(SearchHit hit) =>
        hit.Kind switch
        {
            SearchKind.Project or SearchKind.Figure => Links.Parts(hit.Id),
            SearchKind.Part => Links.Parts(hit.Id, hit.Row / PageRows * PageRows),
            SearchKind.Piece => Links.StockPiece(hit.Id),
            SearchKind.Material when hit.OnHand > 0 => Links.StockOf(null, hit.Key, null),
            SearchKind.Material => hit.Store is { } store ? Links.Store(store) : Links.Shop,
            SearchKind.Store => Links.Store(hit.Id),
            SearchKind.Plan => Links.Plan(hit.Id),
            SearchKind.Design => Links.Designs,
            _ => Links.Working(hit.Key),
        };

    /// <summary>Returns how much was found, as a sentence.</summary>
    public static string Found(IReadOnlyList<SearchGroup> groups, string text)
    {
        var count = groups.Sum(group => group.Hits.Length + group.More);
        return count == 0 ? $"Nothing matches “{text}”." : $"{Words.Count(count, "match", "matches")}.";
    }
}
