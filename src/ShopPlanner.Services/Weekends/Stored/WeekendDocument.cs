using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Weekends.Stored;

/// <summary>What is wished for a project.</summary>
internal sealed record StoredWish(
    [property: JsonPropertyName("project")] Guid Project,
    [property: JsonPropertyName("priority")] int Priority,
    [property: JsonPropertyName("due")] string Due,
    [property: JsonPropertyName("leftOut")] bool IsLeftOut
);

/// <summary>When there is time to work, as typed, and the schedule that was kept.</summary>
/// <param name="Hours">Hours of each weekday, by its English name.</param>
/// <param name="DaysOff">Dates.</param>
/// <param name="ExtraHours">Dates with hours.</param>
/// <param name="Zone">Name in the IANA database; empty for the computer's.</param>
/// <param name="People">How many.</param>
/// <param name="Clamps">How many; empty for no limit.</param>
/// <param name="Drying">How many pieces can dry at a time; empty for no limit.</param>
/// <param name="Wishes">By project.</param>
/// <param name="Moved">The earliest moment of tasks that were put off, by task.</param>
/// <param name="Kept">When each task begins in the schedule that was kept, by task.</param>
/// <param name="Begins">When tasks begin that were set to a time, by task.</param>
/// <param name="Feed">The secret part of the calendar's private address; empty where there is none.</param>
internal sealed record WeekendDocument(
    [property: JsonPropertyName("hours")] ImmutableSortedDictionary<string, string> Hours,
    [property: JsonPropertyName("daysOff")] string DaysOff,
    [property: JsonPropertyName("extraHours")] string ExtraHours,
    [property: JsonPropertyName("zone")] string Zone,
    [property: JsonPropertyName("people")] string People,
    [property: JsonPropertyName("clamps")] string Clamps,
    [property: JsonPropertyName("drying")] string Drying,
    [property: JsonPropertyName("projects")] ImmutableArray<StoredWish> Wishes,
    [property: JsonPropertyName("moved")] ImmutableSortedDictionary<string, DateTime> Moved,
    [property: JsonPropertyName("kept")] ImmutableSortedDictionary<string, DateTime> Kept,
    [property: JsonPropertyName("begins")] ImmutableSortedDictionary<string, DateTime> Begins,
    [property: JsonPropertyName("feed")] string Feed
)
{
    /// <summary>Format <c>shop-planner/weekends</c>.</summary>
    private static readonly StoredFormat<WeekendDocument> Format = new(
        "shop-planner/weekends",
        node => node.AsObject(),
        WithFeed
    );

    private static readonly ImmutableSortedDictionary<string, DateTime> None = ImmutableSortedDictionary.Create<string, DateTime>(
        StringComparer.Ordinal
    );

    /// <summary>Before anything was said: Saturdays, and Sunday mornings.</summary>
    public static WeekendDocument Usual { get; } =
        new(
            ImmutableSortedDictionary
                .Create<string, string>(StringComparer.Ordinal)
                .Add(nameof(DayOfWeek.Saturday), "9:00-17:00")
                .Add(nameof(DayOfWeek.Sunday), "9:00-13:00"),
            "",
            "",
            "",
            "1",
            "",
            "",
            [],
            None,
            None,
            None,
            ""
        );

    /// <summary>The document of a text.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static WeekendDocument Read(string text) => Format.Read(text);

    /// <summary>The text of this document.</summary>
    public string Write() => Format.Write(this);

    // Version 1 is from before tasks were set to a time and the calendar had an address.
    private static JsonObject WithFeed(JsonNode node)
    {
        var members = node.AsObject();
        members.Add("begins", new JsonObject());
        members.Add("feed", "");
        return members;
    }
}
