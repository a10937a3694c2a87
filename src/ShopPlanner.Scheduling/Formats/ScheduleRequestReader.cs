using System.Collections.Immutable;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using ShopPlanner.Core.Documents;

namespace ShopPlanner.Scheduling.Formats;

/// <summary>Reads the members of a schedule request. What is returned is a request only where no fault was noted.</summary>
internal sealed class ScheduleRequestReader(DocumentObject root)
{
    /// <summary>The last minute of any schedule: a hundred years of them.</summary>
    public const int MostMinutes = 52_596_000;

    private const int MostEntries = 100_000;
    private const int MostResources = 1000;
    private const int MostOfAResource = 1_000_000;
    private const double MostSeconds = 86_400;

    private readonly HashSet<string> ids = new(StringComparer.Ordinal);

    public ScheduleRequest Read()
    {
        var windows = Windows(root["windows"]);
        var resources = Amounts(root["resources"].Required("write an object: how much there is of each resource"));
        var tasks = Entries("tasks").Select(task => Task(task, resources)).ToImmutableArray();
        var precedences = Entries("precedences").Select(Order).ToImmutableArray();
        return new(windows, resources, tasks, precedences)
        {
            Start = Start(root["start"]),
            Zone = Zone(root["zone"]),
            Seconds = root["limits"].Object()["seconds"].Seconds(MostSeconds) ?? ScheduleRequest.UsualSeconds,
        };
    }

    private IEnumerable<DocumentObject> Entries(string name) =>
        root[name].Required("write a list […]").Items(MostEntries).Select(item => item.Required("write an object {…}").Object());

    private static ImmutableArray<Window> Windows(DocumentValue list)
    {
        var windows = ImmutableArray.CreateBuilder<Window>();
        foreach (var item in list.Required("write a list of pairs like [[540, 1020]]").Items(MostEntries))
            if (Pair(item) is { } window)
            {
                if (windows.Count > 0 && window.Opens < windows[^1].Closes)
                    item.Refuse(
                        $"begins before the window above it closes, at {windows[^1].Closes}: list windows one after the other"
                    );
                windows.Add(window);
            }

        return windows.ToImmutable();
    }

    private static Window? Pair(DocumentValue item)
    {
        var ends = item.Required("write a pair like [540, 1020]").Items(2).ToList();
        if (item.Element.ValueKind == JsonValueKind.Array && ends.Count < 2 && item.Element.GetArrayLength() < 2)
            item.Refuse("is no pair: write when the window opens and when it closes, like [540, 1020]");
        if (ends.Count < 2)
            return null;
        var (opens, closes) = (Minute(ends[0]), Minute(ends[1]));
        if (opens is null || closes is null)
            return null;
        if (opens < closes)
            return new Window(opens.Value, closes.Value);
        ends[1].Refuse($"is not after the minute that the window opens at, {opens}");
        return null;
    }

    private static int? Minute(DocumentValue value) => value.Required("write a whole number of minutes").Count(0, MostMinutes);

    private static ImmutableSortedDictionary<string, int> Amounts(DocumentValue value)
    {
        var amounts = ImmutableSortedDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        var members = value.Object();
        if (!value.Present || value.Element.ValueKind != JsonValueKind.Object)
            return amounts.ToImmutable();
        if (value.Element.GetPropertyCount() > MostResources)
            return amounts.ToImmutable();
        foreach (var name in value.Element.EnumerateObject().Select(one => one.Name).Distinct(StringComparer.Ordinal))
            amounts[name] = members[name].Required("write a whole number").Count(0, MostOfAResource) ?? 0;
        return amounts.ToImmutable();
    }

    private ScheduleTask Task(DocumentObject task, ImmutableSortedDictionary<string, int> resources)
    {
        var id = task["id"].Required("write a short name, each one once").Id() ?? "";
        if (id.Length > 0 && !ids.Add(id))
            task["id"].Refuse("is the id of two tasks: give each its own");
        return new(
            id,
            Minute(task["labour"]) ?? 0,
            task["hold"].Count(0, MostMinutes) ?? 0,
            Uses(task["labourUses"].Required("write an object like {\"person\": 1}"), resources),
            Uses(task["holdUses"], resources)
        )
        {
            Project = task["project"].Text() ?? "",
            IsSplittable = task["splittable"].Flag() ?? false,
        };
    }

    private static ImmutableSortedDictionary<string, int> Uses(
        DocumentValue value,
        ImmutableSortedDictionary<string, int> resources
    )
    {
        var uses = Amounts(value);
        foreach (var name in uses.Keys.Where(name => !resources.ContainsKey(name)))
            value.Object()[name].Refuse("is of a resource that is not listed under resources");
        return uses;
    }

    private Precedence Order(DocumentObject one) =>
        new(Known(one["before"]), Known(one["after"]), one["wait"].Count(0, MostMinutes) ?? 0);

    private string Known(DocumentValue value)
    {
        var id = value.Required("write the id of a task").Id();
        if (id is not null && !ids.Contains(id))
            value.Refuse("is the id of no task");
        return id ?? "";
    }

    private static LocalDateTime? Start(DocumentValue value)
    {
        if (value.Text() is not { } text)
            return null;
        foreach (var pattern in new[] { LocalDateTimePattern.ExtendedIso, LocalDateTimePattern.DateHourMinuteIso })
            if (pattern.Parse(text).TryGetValue(default, out var start))
                return start;
        value.Refuse("is no date and time: write one like 2027-03-06T00:00");
        return null;
    }

    private static string? Zone(DocumentValue value)
    {
        if (value.Text() is not { } text)
            return null;
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(text) is not null)
            return text;
        value.Refuse("is no time zone: write one like America/Chicago");
        return null;
    }
}
