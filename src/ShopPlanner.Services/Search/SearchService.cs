using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Search;

/// <summary>Looks through what the shop holds; that is read once and kept until the shop changes.</summary>
internal sealed class SearchService(ShopWork work, BuiltInDesigns builtIn) : ISearchService
{
    private volatile Kept? kept;

    public async Task<IReadOnlyList<SearchGroup>> FindAsync(string text, int most, CancellationToken cancel = default)
    {
        if (SearchQuery.Read(text) is not { } query)
            return [];
        var found = (await EntriesAsync(cancel))
            .Select((entry, place) => (entry.Hit, Rank: entry.Rank(query), Place: place))
            .Where(one => one.Rank is not null)
            .ToList();
        return
        [
            .. found
                .GroupBy(one => one.Hit.Kind)
                .OrderBy(group => group.Key)
                .Select(group => new SearchGroup(
                    group.Key,
                    [.. group.OrderBy(one => one.Rank).ThenBy(one => one.Place).Take(most).Select(one => one.Hit)],
                    Math.Max(0, group.Count() - most)
                )),
        ];
    }

    private async Task<IReadOnlyList<SearchEntry>> EntriesAsync(CancellationToken cancel)
    {
        // The number is taken first: what is written meanwhile is looked at the next time.
        var changes = work.Changes;
        if (kept is { } known && known.Changes == changes)
            return known.Entries;
        var entries = await work.ReadAsync(db => new SearchIndex(db, builtIn, cancel).LoadAsync(), cancel);
        kept = new Kept(changes, entries);
        return entries;
    }

    private sealed record Kept(long Changes, IReadOnlyList<SearchEntry> Entries);
}
