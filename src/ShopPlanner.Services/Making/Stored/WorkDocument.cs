using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Storage.Documents;

namespace ShopPlanner.Services.Making.Stored;

/// <summary>What a builder decided about the work.</summary>
internal sealed record StoredChoices(
    [property: JsonPropertyName("glue")] string Glue,
    [property: JsonPropertyName("finish")] string Finish,
    [property: JsonPropertyName("edges")] string? Edges,
    [property: JsonPropertyName("uses")] ImmutableArray<string>? Uses,
    [property: JsonPropertyName("pinsBefore")] bool PinsBefore,
    [property: JsonPropertyName("hingesBefore")] bool HingesBefore,
    [property: JsonPropertyName("panelEdgesBefore")] bool PanelEdgesBefore,
    [property: JsonPropertyName("doorsAfterCase")] bool DoorsAfterCase,
    [property: JsonPropertyName("cleatsFirst")] bool CleatsFirst,
    [property: JsonPropertyName("startGrit")] int StartGrit,
    [property: JsonPropertyName("endGrit")] int? EndGrit,
    [property: JsonPropertyName("coats")] int? Coats,
    [property: JsonPropertyName("hours")] ImmutableSortedDictionary<string, double> Hours
)
{
    /// <summary>As they are stored.</summary>
    public static StoredChoices Of(WorkChoices choices) =>
        new(
            choices.Glue,
            choices.Finish,
            choices.Edges,
            choices.Uses is { } uses ? [.. uses.Select(UseWords.Of)] : null,
            choices.PinsBefore,
            choices.HingesBefore,
            choices.PanelEdgesBefore,
            choices.DoorsAfterCase,
            choices.CleatsFirst,
            choices.StartGrit,
            choices.EndGrit,
            choices.Coats,
            choices.Hours.ToImmutableSortedDictionary(StringComparer.Ordinal)
        );

    /// <summary>As the planner of work takes them.</summary>
    public WorkChoices ToChoices() =>
        new()
        {
            Glue = Glue,
            Finish = Finish,
            Edges = Edges,
            Uses = Uses is { } uses ? [.. uses.Select(UseWords.Read).OfType<FinishUse>()] : null,
            PinsBefore = PinsBefore,
            HingesBefore = HingesBefore,
            PanelEdgesBefore = PanelEdgesBefore,
            DoorsAfterCase = DoorsAfterCase,
            CleatsFirst = CleatsFirst,
            StartGrit = StartGrit,
            EndGrit = EndGrit,
            Coats = Coats,
            Hours = Hours.ToImmutableDictionary(),
        };
}

/// <summary>A step's own words, written by the builder.</summary>
/// <param name="Title">Empty for the plan's.</param>
/// <param name="Says">Lines; none for the plan's.</param>
/// <param name="Instead">What the step said when they were written.</param>
internal sealed record StoredWords(
    [property: JsonPropertyName("title")] string Title,
    [property: JsonPropertyName("says")] ImmutableArray<string> Says,
    [property: JsonPropertyName("instead")] ImmutableArray<string> Instead
);

/// <summary>How long work took.</summary>
/// <param name="Text">As typed.</param>
/// <param name="Kind">What was done, a word of the steps format.</param>
/// <param name="Usual">Minutes as estimated then, without any log.</param>
internal sealed record StoredTime(
    [property: JsonPropertyName("text")] string Text,
    [property: JsonPropertyName("kind")] string Kind,
    [property: JsonPropertyName("usual")] int Usual
);

/// <summary>Time at the saw, in one go.</summary>
/// <param name="Id">Unlike any other.</param>
/// <param name="WhenUtc">When it was logged.</param>
/// <param name="Time">How long it took; estimated is what was cut since the session before.</param>
internal sealed record StoredSession(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("when")] DateTime WhenUtc,
    [property: JsonPropertyName("time")] StoredTime Time
);

/// <summary>What a builder did with a step; kept by the step's id, also while the plan has no such step.</summary>
/// <param name="Id">The step's.</param>
/// <param name="Title">The step's title when something was last kept for it.</param>
/// <param name="DoneUtc">When it was marked as done; null while it is not.</param>
/// <param name="DoneAs">What it said then.</param>
/// <param name="IsSkipped">Whether it is left out.</param>
/// <param name="Note">Free text.</param>
/// <param name="Words">Words of the builder's own; null where the plan's stand.</param>
/// <param name="Measured">Sizes of doors' openings, as typed, by <c>width 1</c>, <c>height 1</c> and so on.</param>
/// <param name="Took">How long it took; null where that was not logged.</param>
internal sealed record StoredStep(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("title")] string Title,
    [property: JsonPropertyName("done")] DateTime? DoneUtc,
    [property: JsonPropertyName("doneAs")] ImmutableArray<string> DoneAs,
    [property: JsonPropertyName("skipped")] bool IsSkipped,
    [property: JsonPropertyName("note")] string Note,
    [property: JsonPropertyName("words")] StoredWords? Words,
    [property: JsonPropertyName("measured")] ImmutableSortedDictionary<string, string> Measured,
    [property: JsonPropertyName("took")] StoredTime? Took
)
{
    /// <summary>Nothing kept yet.</summary>
    public static StoredStep New(string id) =>
        new(id, "", null, [], false, "", null, ImmutableSortedDictionary<string, string>.Empty, null);

    /// <summary>Whether it holds nothing that is worth keeping.</summary>
    [JsonIgnore]
    public bool IsEmpty => DoneUtc is null && !IsSkipped && Words is null && Note.Length == 0 && Measured.IsEmpty && Took is null;
}

/// <summary>A step that the builder added.</summary>
/// <param name="Id">Unlike any of a plan.</param>
/// <param name="IsFinish">Whether it belongs to the finish, not to the building.</param>
/// <param name="Title">A few words.</param>
/// <param name="Says">What to do, a line each.</param>
internal sealed record OwnStep(
    [property: JsonPropertyName("id")] string Id,
    [property: JsonPropertyName("finish")] bool IsFinish,
    [property: JsonPropertyName("title")] string Title,
    [property: JsonPropertyName("says")] ImmutableArray<string> Says
);

/// <summary>The builder's hand in a project's order of work.</summary>
/// <param name="Choices">What she decided.</param>
/// <param name="Steps">What she did with steps.</param>
/// <param name="Own">Steps that she added.</param>
/// <param name="Order">Ids of all steps in the order that she wants; empty while the plan's stands.</param>
/// <param name="Listed">How much of what the finish takes was put on the shopping list, by its name there.</param>
/// <param name="Cutting">Time at the saw, oldest first.</param>
internal sealed record WorkDocument(
    [property: JsonPropertyName("choices")] StoredChoices Choices,
    [property: JsonPropertyName("steps")] ImmutableArray<StoredStep> Steps,
    [property: JsonPropertyName("own")] ImmutableArray<OwnStep> Own,
    [property: JsonPropertyName("order")] ImmutableArray<string> Order,
    [property: JsonPropertyName("listed")] ImmutableSortedDictionary<string, string> Listed,
    [property: JsonPropertyName("cutting")] ImmutableArray<StoredSession> Cutting
)
{
    /// <summary>Format <c>shop-planner/work</c>.</summary>
    private static readonly StoredFormat<WorkDocument> Format = new("shop-planner/work", node => node.AsObject(), WithTimes);

    /// <summary>Before anything was decided or done.</summary>
    public static WorkDocument Empty { get; } =
        new(StoredChoices.Of(WorkChoices.Usual), [], [], [], ImmutableSortedDictionary<string, string>.Empty, []);

    /// <summary>The document of a text.</summary>
    /// <exception cref="StoredDocumentException">It is damaged, or newer than this program.</exception>
    public static WorkDocument Read(string text) => Format.Read(text);

    /// <summary>The text of this document.</summary>
    public string Write() => Format.Write(this);

    /// <summary>What is kept for a step; nothing yet where there is none.</summary>
    public StoredStep Of(string id) => Steps.FirstOrDefault(step => step.Id == id) ?? StoredStep.New(id);

    /// <summary>How much of an item was put on the shopping list; null where it was not.</summary>
    public string? ListedOf(string item) => Listed.TryGetValue(item, out var amount) ? amount : null;

    /// <summary>The same with something else kept for a step.</summary>
    public WorkDocument With(StoredStep step)
    {
        var others = Steps.Where(one => one.Id != step.Id);
        return this with { Steps = step.IsEmpty ? [.. others] : [.. others, step] };
    }

    /// <summary>The same without a step: neither added by the builder nor anything kept for it.</summary>
    public WorkDocument Without(string id) =>
        this with
        {
            Steps = [.. Steps.Where(one => one.Id != id)],
            Own = [.. Own.Where(one => one.Id != id)],
            Order = [.. Order.Where(one => one != id)],
        };

    /// <summary>For a copy of the project, to be built from the start: it keeps the builder's decisions and notes, and drops the
    /// steps done, the measurements, the times and what was put on the shopping list.</summary>
    public WorkDocument ForCopy() =>
        this with
        {
            Steps =
            [
                .. Steps
                    .Select(step => step with { DoneUtc = null, DoneAs = [], Measured = step.Measured.Clear(), Took = null })
                    .Where(step => !step.IsEmpty),
            ],
            Listed = ImmutableSortedDictionary<string, string>.Empty,
            Cutting = [],
        };

    // Version 1 is from before times were logged.
    private static JsonObject WithTimes(JsonNode node)
    {
        var members = node.AsObject();
        foreach (var step in members["steps"] as JsonArray ?? throw new KeyNotFoundException("the member steps is missing"))
            step!.AsObject().Add("took", null);
        members.Add("cutting", new JsonArray());
        return members;
    }
}
