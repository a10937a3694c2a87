namespace ShopPlanner.Services.Backups;

/// <summary>When every page of the database was read last.</summary>
internal sealed class PageCheck
{
    private long ticks;

    /// <summary>Null where it was not yet since the start.</summary>
    public DateTime? DoneUtc
    {
        get => Interlocked.Read(ref ticks) is var t and > 0 ? new DateTime(t, DateTimeKind.Utc) : null;
        set => Interlocked.Exchange(ref ticks, value?.Ticks ?? 0);
    }
}
