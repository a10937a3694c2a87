using NodaTime;

namespace ShopPlanner.Scheduling.Calendars;

/// <summary>Minutes of a schedule ↔ dates and times of day. Minutes count elapsed time.</summary>
/// <param name="Start">The instant of minute 0.</param>
/// <param name="Zone">The zone that the shop's clock follows.</param>
public sealed record ScheduleClock(Instant Start, DateTimeZone Zone)
{
    /// <summary>Returns the clock of a request that says its start; minute 0 of one that names no zone is in UTC.</summary>
    public static ScheduleClock? Of(ScheduleRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var zone = (request.Zone is { } name ? DateTimeZoneProviders.Tzdb.GetZoneOrNull(name) : null) ?? DateTimeZone.Utc;
        return request.Start is { } start ? new ScheduleClock(zone.AtLeniently(start).ToInstant(), zone) : null;
    }

    /// <summary>Returns the instant of a minute.</summary>
    public Instant InstantAt(int minute) => Start + Duration.FromMinutes(minute);

    /// <summary>Returns what the shop's clock shows at a minute.</summary>
    public LocalDateTime LocalAt(int minute) => InstantAt(minute).InZone(Zone).LocalDateTime;

    /// <summary>Returns the minute of a date and time; of one that the clock skips, as much later as it skips; of one that it
    /// shows twice, the first.</summary>
    public int MinuteOf(LocalDateTime local) => MinuteOf(Zone.AtLeniently(local).ToInstant());

    /// <summary>Returns the minute that an instant lies in.</summary>
    public int MinuteOf(Instant instant) => (int)Math.Floor((instant - Start).TotalMinutes);
}
