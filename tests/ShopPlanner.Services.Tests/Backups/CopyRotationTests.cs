using ShopPlanner.Services.Backups;

namespace ShopPlanner.Services.Tests.Backups;

public sealed class CopyRotationTests
{
    private static readonly DateTimeOffset Today = new(2026, 11, 28, 6, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Two_years_of_days_leave_14_days_8_weeks_and_12_months()
    {
        var kept = Keep(Daily(Today, 730));
        Assert.All(Enumerable.Range(0, 14), day => Assert.Contains(Today.AddDays(-day), kept));
        // The last days of the weeks before: Sundays, of which two are among the 14 days.
        Assert.All(Enumerable.Range(0, 7), week => Assert.Contains(Today.AddDays(-6 - (7 * week)), kept));
        Assert.All(
            Enumerable.Range(0, 11),
            month => Assert.Contains(new DateTimeOffset(2026, 11, 1, 6, 0, 0, TimeSpan.Zero).AddMonths(-month).AddDays(-1), kept)
        );
        Assert.InRange(kept.Count, 25, 34);
    }

    [Fact]
    public void Day_by_day_no_more_is_lost_than_at_once()
    {
        var files = new List<(string File, DateTimeOffset At)>();
        foreach (var one in Daily(Today, 500).OrderBy(one => one.At))
        {
            files.Add(one);
            var surplus = CopyRotation.Surplus(files).ToHashSet();
            files.RemoveAll(file => surplus.Contains(file.File));
        }

        Assert.Equal(Keep(Daily(Today, 500)).Order(), files.Select(file => file.At).Order());
    }

    [Fact]
    public void A_clock_that_jumps_a_year_removes_none_but_one() =>
        Assert.InRange(CopyRotation.Surplus([.. Daily(Today, 14), ("later", Today.AddYears(1))]).Count, 0, 1);

    [Fact]
    public void A_shop_that_stood_still_for_a_summer_keeps_its_backups() =>
        Assert.Empty(CopyRotation.Surplus([("spring", Today.AddDays(-200)), ("now", Today)]));

    private static IEnumerable<(string File, DateTimeOffset At)> Daily(DateTimeOffset last, int many) =>
        Enumerable.Range(0, many).Select(day => (day.ToString("000"), last.AddDays(-day)));

    private static List<DateTimeOffset> Keep(IEnumerable<(string File, DateTimeOffset At)> all)
    {
        var list = all.ToList();
        var surplus = CopyRotation.Surplus(list).ToHashSet();
        return [.. list.Where(one => !surplus.Contains(one.File)).Select(one => one.At)];
    }
}
