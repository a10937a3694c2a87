using System.Collections.Immutable;
using NodaTime;

namespace ShopPlanner.Scheduling.Calendars;

/// <summary>Hours that are open for work on a day of each week, by the shop's clock.</summary>
/// <param name="Day">The day.</param>
/// <param name="From">When work can begin.</param>
/// <param name="To">When it must end; midnight for the end of the day.</param>
public sealed record WorkingHours(IsoDayOfWeek Day, LocalTime From, LocalTime To);

/// <summary>Hours that are open on one date, whatever the weekday.</summary>
/// <param name="Date">The date.</param>
/// <param name="From">When work can begin.</param>
/// <param name="To">When it must end; midnight for the end of the day.</param>
public sealed record ExtraHours(LocalDate Date, LocalTime From, LocalTime To);

/// <summary>When there is time to work, in the local time of a zone. Where the clock is set forward or back, the windows keep
/// to
/// what it shows, and their minutes are those that pass.</summary>
/// <param name="Zone">The zone that the shop's clock follows.</param>
/// <param name="Week">The hours of each week.</param>
public sealed record WorkingCalendar(DateTimeZone Zone, ImmutableArray<WorkingHours> Week)
{
    /// <summary>Dates without working hours.</summary>
    public ImmutableHashSet<LocalDate> DaysOff { get; init; } = [];

    /// <summary>Hours besides those of each week; they count on a day off too.</summary>
    public ImmutableArray<ExtraHours> Extra { get; init; } = [];

    /// <summary>Returns the windows of some days, those that overlap or touch put together. What lies before the clock's first
    /// minute is left out.</summary>
    /// <param name="clock">Counts the minutes.</param>
    /// <param name="days">How many days, from that of the clock's first minute.</param>
    public ImmutableArray<Window> Windows(ScheduleClock clock, int days)
    {
        ArgumentNullException.ThrowIfNull(clock);
        var first = clock.LocalAt(0).Date;
        var spans = Enumerable
            .Range(0, days)
            .Select(first.PlusDays)
            .SelectMany(Hours)
            .Select(hours => Window(clock, hours))
            .Where(window => window.Minutes > 0)
            .OrderBy(window => window.Opens);
        return Merge(spans);
    }

    private IEnumerable<ExtraHours> Hours(LocalDate date)
    {
        var usual = DaysOff.Contains(date)
            ? []
            : Week.Where(hours => hours.Day == date.DayOfWeek).Select(hours => new ExtraHours(date, hours.From, hours.To));
        return usual.Concat(Extra.Where(hours => hours.Date == date));
    }

    private static Window Window(ScheduleClock clock, ExtraHours hours)
    {
        var end = hours.To == LocalTime.Midnight ? hours.Date.PlusDays(1) : hours.Date;
        return new Window(Math.Max(0, clock.MinuteOf(hours.Date + hours.From)), Math.Max(0, clock.MinuteOf(end + hours.To)));
    }

    private static ImmutableArray<Window> Merge(IEnumerable<Window> windows)
    {
        var merged = ImmutableArray.CreateBuilder<Window>();
        foreach (var window in windows)
            if (merged.Count > 0 && window.Opens <= merged[^1].Closes)
                merged[^1] = merged[^1] with { Closes = Math.Max(merged[^1].Closes, window.Closes) };
            else
                merged.Add(window);
        return merged.ToImmutable();
    }
}
