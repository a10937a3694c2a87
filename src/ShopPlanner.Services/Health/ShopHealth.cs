using System.Collections.Immutable;

namespace ShopPlanner.Services.Health;

/// <summary>The warnings that stand, told and cleared by whoever finds the cause.</summary>
internal sealed class ShopHealth(TimeProvider clock) : IShopHealth
{
    private ImmutableSortedDictionary<HealthTopic, HealthNotice> notices = ImmutableSortedDictionary<
        HealthTopic,
        HealthNotice
    >.Empty;

    public event Action? Changed;

    public IReadOnlyList<HealthNotice> Notices => [.. Volatile.Read(ref notices).Values];

    /// <summary>Says something; the time of the first saying stays while the topic stands.</summary>
    public void Tell(HealthTopic topic, string text)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        var isNew = ImmutableInterlocked.Update(
            ref notices,
            all => all.SetItem(topic, new(topic, text, all.TryGetValue(topic, out var old) ? old.SinceUtc : now))
        );
        if (isNew)
            Changed?.Invoke();
    }

    /// <summary>Takes a warning away once its cause is gone.</summary>
    public void Clear(HealthTopic topic)
    {
        if (ImmutableInterlocked.Update(ref notices, all => all.Remove(topic)))
            Changed?.Invoke();
    }
}
