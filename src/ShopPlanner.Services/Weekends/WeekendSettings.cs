using System.Collections.Immutable;

namespace ShopPlanner.Services.Weekends;

/// <summary>What is wished for a project.</summary>
/// <param name="Project">The project.</param>
/// <param name="Priority">1 is finished first; those of the same number together as early as possible.</param>
/// <param name="Due">The date to be finished by, as typed; empty for any time.</param>
/// <param name="IsLeftOut">Whether its work is not scheduled.</param>
public sealed record ProjectWish(Guid Project, int Priority, string Due, bool IsLeftOut)
{
    /// <summary>The usual priority.</summary>
    public const int Usual = 2;

    /// <summary>Before anything is wished.</summary>
    public static ProjectWish Of(Guid project) => new(project, Usual, "", false);
}

/// <summary>When there is time to work, and with what, as typed.</summary>
/// <param name="Hours">Hours of each weekday, by its English name: <c>9:00-17:00</c>; empty for none.</param>
/// <param name="DaysOff">Dates without work: <c>2027-03-06, 2027-03-07</c>.</param>
/// <param name="ExtraHours">Hours on single dates: <c>2027-03-05 19:00-21:00</c>.</param>
/// <param name="Zone">Time zone; empty for the computer's.</param>
/// <param name="People">How many work.</param>
/// <param name="Clamps">How many clamps there are; empty for no limit.</param>
/// <param name="Drying">How many pieces can dry at a time; empty for no limit.</param>
/// <param name="Wishes">What is wished, by project.</param>
/// <param name="Version">Rises by one with every save.</param>
public sealed record WeekendSettings(
    ImmutableSortedDictionary<string, string> Hours,
    string DaysOff,
    string ExtraHours,
    string Zone,
    string People,
    string Clamps,
    string Drying,
    ImmutableArray<ProjectWish> Wishes,
    int Version
)
{
    /// <summary>Returns the hours of a weekday, as typed.</summary>
    public string HoursOf(DayOfWeek day) => Hours.GetValueOrDefault(day.ToString(), "");

    /// <summary>Returns the same with other hours on a weekday.</summary>
    public WeekendSettings With(DayOfWeek day, string hours) => this with { Hours = Hours.SetItem(day.ToString(), hours) };

    /// <summary>Returns what is wished for a project.</summary>
    public ProjectWish WishOf(Guid project) => Wishes.FirstOrDefault(one => one.Project == project) ?? ProjectWish.Of(project);

    /// <summary>Returns the same with something else wished for a project.</summary>
    public WeekendSettings With(ProjectWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return this with { Wishes = [.. Wishes.Where(one => one.Project != wish.Project), wish] };
    }
}
