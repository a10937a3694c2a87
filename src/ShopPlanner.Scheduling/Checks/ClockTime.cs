using NodaTime;
using NodaTime.Text;

namespace ShopPlanner.Scheduling.Checks;

/// <summary>What the shop's clock shows at a minute of a schedule.</summary>
internal static class ClockTime
{
    private static readonly LocalDateTimePattern Pattern = LocalDateTimePattern.CreateWithInvariantCulture(
        "ddd d MMM uuuu, HH':'mm"
    );

    /// <summary>Returns date and time of day.</summary>
    public static string Say(ScheduleRequest request, LocalDateTime start, int minute)
    {
        var zone = request.Zone is { } name ? DateTimeZoneProviders.Tzdb.GetZoneOrNull(name) : null;
        return Pattern.Format((zone ?? DateTimeZone.Utc).AtLeniently(start).Plus(Duration.FromMinutes(minute)).LocalDateTime);
    }
}
