using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Book;

/// <summary>What the lines of the book are put together by.</summary>
public enum BookBy
{
    /// <summary>The month, newest first.</summary>
    Month,

    /// <summary>The project, by name.</summary>
    Project,

    /// <summary>The store, by name.</summary>
    Store,
}

/// <summary>Lines of the book that belong together.</summary>
/// <param name="Key">Names the group in an address.</param>
/// <param name="Label">What people read.</param>
/// <param name="Entries">At least one.</param>
public sealed record BookGroup(string Key, string Label, ImmutableArray<BookEntry> Entries)
{
    /// <summary>Lines of one figure.</summary>
    public IEnumerable<BookEntry> Of(BookFigure figure) => Entries.Where(entry => entry.Figure == figure);

    /// <summary>What was spent.</summary>
    public Money Spent => BookTotals.Money(Of(BookFigure.Spent));

    /// <summary>The time that was logged, in minutes.</summary>
    public int Minutes => Of(BookFigure.Hours).Sum(entry => entry.Minutes);

    /// <summary>The wood of a figure.</summary>
    public Area Wood(BookFigure figure) => BookTotals.Wood(Of(figure));
}

/// <summary>Adds up lines of the book.</summary>
public static class BookTotals
{
    /// <summary>The key of what belongs to no project or store.</summary>
    public const string NoKey = "none";

    /// <summary>Returns the lines by month, project or store. Time belongs to no store and is left out there.</summary>
    public static ImmutableArray<BookGroup> By(IEnumerable<BookEntry> entries, BookBy by)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var groups = entries
            .Where(entry => by != BookBy.Store || entry.Figure != BookFigure.Hours)
            .GroupBy(entry => KeyOf(entry, by))
            .Select(same => new BookGroup(same.Key, LabelOf(same.First(), by), [.. same]));
        return by == BookBy.Month
            ? [.. groups.OrderByDescending(group => group.Key, StringComparer.Ordinal)]
            :
            [
                .. groups
                    .OrderBy(group => group.Key == NoKey)
                    .ThenBy(group => group.Label, StringComparer.OrdinalIgnoreCase)
                    .ThenBy(group => group.Key, StringComparer.Ordinal),
            ];
    }

    /// <summary>Returns the money of some lines.</summary>
    public static Money Money(IEnumerable<BookEntry> entries) =>
        entries.Aggregate(Core.Measures.Money.Zero, (sum, entry) => sum + entry.Money);

    /// <summary>Returns the wood of some lines.</summary>
    public static Area Wood(IEnumerable<BookEntry> entries) => entries.Aggregate(Area.Zero, (sum, entry) => sum + entry.Area);

    private static string KeyOf(BookEntry entry, BookBy by) =>
        by switch
        {
            BookBy.Month => entry.Day.ToString("yyyy-MM", CultureInfo.InvariantCulture),
            BookBy.Project => entry.Project?.ToString() ?? NoKey,
            _ => entry.Store.Length == 0 ? NoKey : entry.Store,
        };

    private static string LabelOf(BookEntry entry, BookBy by) =>
        by switch
        {
            BookBy.Month => entry.Day.ToString("MMM yyyy", CultureInfo.InvariantCulture),
            BookBy.Project => entry.Project is null ? "No project" : entry.ProjectName,
            _ => entry.Store.Length == 0 ? "No store named" : entry.Store,
        };
}
