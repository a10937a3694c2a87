using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Weekends;

/// <summary>The calendar's private address.</summary>
/// <param name="Token">Its secret part: 128 random bits as 32 hexadecimal digits; empty where there is no address.</param>
public sealed record WeekendFeed(string Token);

/// <summary>Gives the schedule to calendars that ask for it again and again, at an address that nobody can guess.</summary>
public interface IWeekendFeedService
{
    /// <summary>Returns the address.</summary>
    Task<WeekendFeed> GetAsync(CancellationToken cancel = default);

    /// <summary>Makes a new address; the one before is gone.</summary>
    Task<Outcome<WeekendFeed>> MakeAsync(CommandId command, CancellationToken cancel = default);

    /// <summary>Takes the address away.</summary>
    Task<Outcome<WeekendFeed>> StopAsync(CancellationToken cancel = default);

    /// <summary>Returns the schedule as iCalendar (RFC 5545); null where the token is not the address's.</summary>
    Task<string?> CalendarAsync(string token, CancellationToken cancel = default);
}
