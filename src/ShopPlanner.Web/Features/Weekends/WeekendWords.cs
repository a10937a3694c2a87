using System.Globalization;
using ShopPlanner.Scheduling;
using ShopPlanner.Scheduling.Checks;
using ShopPlanner.Services.Weekends;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Weekends;

/// <summary>The words of schedules.</summary>
internal static class WeekendWords
{
    private const int DayMinutes = 1440;

    /// <summary><c>Saturday, Mar 6</c>.</summary>
    public static string Day(DateTime local) => local.ToString("dddd, MMM d", CultureInfo.InvariantCulture);

    /// <summary><c>9:30 AM</c>.</summary>
    public static string Time(DateTime local) => local.ToString("h:mm tt", CultureInfo.InvariantCulture);

    /// <summary><c>Sat, Mar 6, 9:30 AM</c>.</summary>
    public static string Moment(DateTime local) => local.ToString("ddd, MMM d, h:mm tt", CultureInfo.InvariantCulture);

    /// <summary><c>1 h 30 min</c>, <c>2 days 3 h</c>.</summary>
    public static string Lasts(double minutes)
    {
        var (days, rest) = ((int)minutes / DayMinutes, (int)minutes % DayMinutes);
        var text = days == 1 ? "1 day" : string.Create(CultureInfo.InvariantCulture, $"{days} days");
        return days == 0 ? Minutes.Say(rest)
            : rest == 0 ? text
            : $"{text} {Minutes.Say(rest)}";
    }

    /// <summary><c> (usually 30 min; from 4 logs)</c>; empty where the estimate is the usual one.</summary>
    public static string Learned(WeekendTask task) =>
        task.Logs == 0 ? "" : $" (usually {Minutes.Say(task.Usual)}; from {Words.Count(task.Logs, "log")})";

    /// <summary>How good a schedule is.</summary>
    public static string Quality(WeekendBoard board) =>
        board.Status == ScheduleStatus.Proven ? "No schedule finishes earlier"
        : board is { Finish: { } finish, Bound: { } bound } && finish > bound
            ? $"Could be up to {Lasts((finish - bound).TotalMinutes)} earlier"
        : "No earlier schedule found";
}
