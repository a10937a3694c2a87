using System.Globalization;

namespace ShopPlanner.Services.Backups;

/// <summary>Which of the daily backups are kept. By their number and not by their age: a clock that jumps, or a summer without
/// the shop, removes none.</summary>
internal static class CopyRotation
{
    private const int Days = 14,
        Weeks = 8,
        Months = 12;

    /// <summary>The rule in words.</summary>
    public const string InWords =
        "Kept are the newest 14 daily backups, the last of each week for 8 weeks, the last of each month for 12 months, the "
        + "newest 10 made before upgrades and before restores, and all that you made yourself.";

    /// <summary>Backups of one kind that are kept by number alone.</summary>
    public const int Others = 10;

    /// <summary>Returns those that are no longer kept.</summary>
    /// <param name="made">Whole backups, each with its time; no week or month is counted twice.</param>
    public static IReadOnlyList<string> Surplus(IEnumerable<(string File, DateTimeOffset At)> made)
    {
        var newest = made.OrderByDescending(one => one.At).ToList();
        var kept = newest.Take(Days).ToHashSet();
        kept.UnionWith(LastOf(newest, one => (ISOWeek.GetYear(one.UtcDateTime), ISOWeek.GetWeekOfYear(one.UtcDateTime)), Weeks));
        kept.UnionWith(LastOf(newest, one => (one.UtcDateTime.Year, one.UtcDateTime.Month), Months));
        return [.. newest.Where(one => !kept.Contains(one)).Select(one => one.File)];
    }

    private static IEnumerable<(string File, DateTimeOffset At)> LastOf<T>(
        IEnumerable<(string File, DateTimeOffset At)> newestFirst,
        Func<DateTimeOffset, T> span,
        int many
    ) => newestFirst.GroupBy(one => span(one.At)).Take(many).Select(group => group.First());
}
