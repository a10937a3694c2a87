using System.Collections.Concurrent;
using System.Collections.Immutable;
using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Web.Features.Publish;

/// <summary>Photos that a page has taken and a download is to carry, in memory alone: they are cleaned already, and nothing of
/// them is stored.</summary>
internal sealed class PhotoShelf
{
    // A page holds one set; more pages than this are open nowhere.
    private const int MostSets = 8;

    private readonly ConcurrentDictionary<Guid, ImmutableArray<CleanPhoto>> sets = new();
    private readonly ConcurrentQueue<Guid> order = new();

    /// <summary>Puts a set on the shelf and returns its key; the oldest falls off.</summary>
    public Guid Put(ImmutableArray<CleanPhoto> photos)
    {
        var key = Guid.NewGuid();
        sets[key] = photos;
        order.Enqueue(key);
        while (sets.Count > MostSets && order.TryDequeue(out var oldest))
            sets.TryRemove(oldest, out _);
        return key;
    }

    /// <summary>The photos of a key; null where they are gone.</summary>
    public ImmutableArray<CleanPhoto>? Find(Guid key) => sets.TryGetValue(key, out var photos) ? photos : null;
}
