using NodaTime;
using ShopPlanner.Scheduling.Calendars;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;

namespace ShopPlanner.Scheduling.Tests.Calendars;

/// <summary>Windows keep to what the shop's clock shows; holds last as long as they last. In Chicago the clock goes forward on
/// March 14, 2027 at 2:00 and back on November 7, 2027 at 2:00 (IANA time zone database).</summary>
public sealed class ClockChangeTests
{
    private static readonly DateTimeZone Chicago = DateTimeZoneProviders.Tzdb["America/Chicago"];

    private static readonly WorkingCalendar Weekends = new(
        Chicago,
        [
            new(IsoDayOfWeek.Saturday, new LocalTime(9, 0), new LocalTime(17, 0)),
            new(IsoDayOfWeek.Sunday, new LocalTime(9, 0), new LocalTime(13, 0)),
        ]
    );

    [Theory]
    [InlineData(2027, 3, 6, 1440)]
    [InlineData(2027, 3, 13, 1380)]
    [InlineData(2027, 11, 6, 1500)]
    public void Sunday_opens_at_nine_by_the_clock(int year, int month, int day, int minutesLater)
    {
        var clock = Clock(new LocalDateTime(year, month, day, 0, 0));
        var windows = Weekends.Windows(clock, 2);
        Assert.Equal(2, windows.Length);
        Assert.Equal(new Window(540, 1020), windows[0]);
        Assert.Equal(new Window(540 + minutesLater, 780 + minutesLater), windows[1]);
        Assert.Equal(new LocalTime(9, 0), clock.LocalAt(windows[1].Opens).TimeOfDay);
    }

    [Theory]
    [InlineData(3, 13, 11)]
    [InlineData(11, 6, 9)]
    [InlineData(6, 5, 10)]
    public void A_hold_overnight_lasts_as_many_minutes_as_it_takes(int month, int day, int hour)
    {
        // Glued until 17:00 on Saturday, seventeen hours in clamps.
        var clock = Clock(new LocalDateTime(2027, month, day, 0, 0));
        var windows = Weekends.Windows(clock, 2);
        var request = new ScheduleRequest(
            windows,
            Some.Shop,
            [Some.Glue("glue", 480, 1020), Some.Labor("sand", 10)],
            [new Precedence("glue", "sand", 0)]
        );
        var schedule = SchedulePlanner.Plan(request, new());
        Assert.Equal(new LocalTime(hour, 0), clock.LocalAt(schedule.Starts["sand"]).TimeOfDay);
        Assert.Equal(schedule.Starts["glue"] + 480 + 1020, schedule.Starts["sand"]);
    }

    [Fact]
    public void A_window_over_the_change_has_the_minutes_that_pass()
    {
        var night = new WorkingCalendar(Chicago, [new(IsoDayOfWeek.Sunday, new LocalTime(0, 0), new LocalTime(4, 0))]);
        Assert.Equal(180, Assert.Single(night.Windows(Clock(new LocalDateTime(2027, 3, 14, 0, 0)), 1)).Minutes);
        Assert.Equal(300, Assert.Single(night.Windows(Clock(new LocalDateTime(2027, 11, 7, 0, 0)), 1)).Minutes);
        Assert.Equal(240, Assert.Single(night.Windows(Clock(new LocalDateTime(2027, 7, 4, 0, 0)), 1)).Minutes);
    }

    [Fact]
    public void Hours_that_the_clock_skips_are_no_window()
    {
        var skipped = new WorkingCalendar(Chicago, [new(IsoDayOfWeek.Sunday, new LocalTime(2, 0), new LocalTime(3, 0))]);
        Assert.Empty(skipped.Windows(Clock(new LocalDateTime(2027, 3, 14, 0, 0)), 1));
    }

    [Fact]
    public void Days_off_are_closed_and_extra_hours_open()
    {
        var calendar = Weekends with
        {
            DaysOff = [new LocalDate(2027, 6, 5)],
            Extra = [new ExtraHours(new LocalDate(2027, 6, 4), new LocalTime(19, 0), new LocalTime(21, 0))],
        };
        var clock = Clock(new LocalDateTime(2027, 6, 4, 0, 0));
        Assert.Equal([new Window(1140, 1260), new Window(3420, 3660)], calendar.Windows(clock, 3));
    }

    [Fact]
    public void What_lies_before_the_first_minute_is_left_out()
    {
        var clock = Clock(new LocalDateTime(2027, 6, 5, 12, 0));
        Assert.Equal([new Window(0, 300), new Window(1260, 1500)], Weekends.Windows(clock, 2));
    }

    [Fact]
    public void Hours_until_midnight_reach_into_the_next_morning()
    {
        var late = new WorkingCalendar(
            Chicago,
            [
                new(IsoDayOfWeek.Friday, new LocalTime(20, 0), LocalTime.Midnight),
                new(IsoDayOfWeek.Saturday, LocalTime.Midnight, new LocalTime(1, 0)),
            ]
        );
        Assert.Equal([new Window(1200, 1500)], late.Windows(Clock(new LocalDateTime(2027, 6, 4, 0, 0)), 2));
    }

    private static ScheduleClock Clock(LocalDateTime start) => new(Chicago.AtLeniently(start).ToInstant(), Chicago);
}
