using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Making;

/// <summary>A page of a project's work.</summary>
public enum WorkPage
{
    /// <summary>All but the finish of the piece as it stands.</summary>
    Build,

    /// <summary>What is finished before and after it is put together.</summary>
    Finish,
}

/// <summary>What an order of work was made from.</summary>
public enum WorkBasis
{
    /// <summary>From nothing: the project has neither a design nor parts.</summary>
    Nothing,

    /// <summary>From the design.</summary>
    Design,

    /// <summary>From the parts list alone: how they go together is the builder's to say.</summary>
    Parts,

    /// <summary>From nothing: the design has errors.</summary>
    FaultyDesign,
}

/// <summary>How a step stands.</summary>
public enum StepMark
{
    /// <summary>It is still to be done.</summary>
    Open,

    /// <summary>It is done.</summary>
    Done,

    /// <summary>It is left out.</summary>
    Skipped,
}

/// <summary>The opening of doors, drawn and measured.</summary>
/// <param name="Number">Among those of its step, from 1.</param>
/// <param name="Drawn">As designed.</param>
/// <param name="Width">Measured width, as typed.</param>
/// <param name="Height">Measured height, as typed.</param>
public sealed record OpeningView(int Number, DoorOpening Drawn, string Width, string Height)
{
    /// <summary>The size of each door that follows, or what is wrong with what was measured; null until both are
    /// measured.</summary>
    public DoorFit? Fit { get; init; }

    /// <summary>The key of its measured width.</summary>
    public string WidthKey => Key("width");

    /// <summary>The key of its measured height.</summary>
    public string HeightKey => Key("height");

    private string Key(string size) => FormattableString.Invariant($"{size} {Number}");
}

/// <summary>A step as the builder has it.</summary>
/// <param name="Step">As it was worked out, or as she added it.</param>
/// <param name="Title">The title in force.</param>
/// <param name="Says">The sentences in force.</param>
/// <param name="Mark">How it stands.</param>
public sealed record WorkStepView(WorkStep Step, string Title, ImmutableArray<string> Says, StepMark Mark)
{
    /// <summary>When it was marked as done; null while it is not.</summary>
    public DateTime? DoneUtc { get; init; }

    /// <summary>Whether the plan says something else now than when it was done.</summary>
    public bool IsChangedSinceDone { get; init; }

    /// <summary>What it said when it was done and no longer says.</summary>
    public ImmutableArray<string> DoneAs { get; init; } = [];

    /// <summary>What the plan said when the builder wrote her own words, where it says something else now; empty
    /// otherwise.</summary>
    public ImmutableArray<string> WrittenFor { get; init; } = [];

    /// <summary>Whether the words are the builder's own.</summary>
    public bool IsEdited { get; init; }

    /// <summary>Whether the builder added it.</summary>
    public bool IsOwn { get; init; }

    /// <summary>The builder's note.</summary>
    public string Note { get; init; } = "";

    /// <summary>How long it took, as typed; empty where that was not logged.</summary>
    public string Took { get; init; } = "";

    /// <summary>Titles of steps that have to be done first and are neither done nor skipped.</summary>
    public ImmutableArray<string> WaitsFor { get; init; } = [];

    /// <summary>The openings to measure; none for a step that fits no door.</summary>
    public ImmutableArray<OpeningView> Openings { get; init; } = [];
}

/// <summary>What was kept for a step that the plan no longer has.</summary>
/// <param name="Id">The step's.</param>
/// <param name="Title">What it was called.</param>
/// <param name="Mark">How it stood.</param>
/// <param name="Lines">The builder's words and note.</param>
public sealed record LostStep(string Id, string Title, StepMark Mark, ImmutableArray<string> Lines);

/// <summary>The order of work of a project with the builder's hand in it.</summary>
/// <param name="ProjectId">The project.</param>
/// <param name="Basis">What it was made from.</param>
/// <param name="Unit">Of its lengths.</param>
/// <param name="Steps">In the order to do them.</param>
/// <param name="Version">Rises by one with every change.</param>
public sealed record WorkView(Guid ProjectId, WorkBasis Basis, LengthUnit Unit, ImmutableArray<WorkStepView> Steps, int Version)
{
    /// <summary>The piece, to draw it; null where there is no design.</summary>
    public Piece? Piece { get; init; }

    /// <summary>Names of its parts, by letter.</summary>
    public ImmutableDictionary<string, string> Names { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>What was decided.</summary>
    public WorkChoices Choices { get; init; } = WorkChoices.Usual;

    /// <summary>Units that are put together by themselves.</summary>
    public ImmutableArray<Subassembly> Subassemblies { get; init; } = [];

    /// <summary>What the finish takes; null where the piece stays bare.</summary>
    public FinishAmounts? Finish { get; init; }

    /// <summary>Whether all that the finish takes was put on the shopping list, as much as it takes now.</summary>
    public bool IsFinishListed { get; init; }

    /// <summary>What cannot be put together, or only with care.</summary>
    public ImmutableArray<WorkFinding> Findings { get; init; } = [];

    /// <summary>What was kept for steps that are no longer there.</summary>
    public ImmutableArray<LostStep> Lost { get; init; } = [];

    /// <summary>What undoing would take back; null when there is nothing.</summary>
    public string? Undo { get; init; }

    /// <summary>What redoing would bring again; null when there is nothing.</summary>
    public string? Redo { get; init; }

    /// <summary>The steps of a page.</summary>
    public IEnumerable<WorkStepView> On(WorkPage page) => Steps.Where(one => WorkPages.Has(page, one.Step.Phase));
}

/// <summary>What a builder decided about the work, as typed. Where a text is empty, the usual figure counts.</summary>
/// <param name="ProjectId">The project.</param>
/// <param name="Choices">What is chosen, not typed.</param>
/// <param name="Edges">Id of the treatment of sheets' edges, of <see cref="WorkLists.Edges"/>.</param>
/// <param name="Use">What the finish will meet, of <see cref="WorkLists.Uses"/>.</param>
/// <param name="Coats">How many.</param>
/// <param name="StartGrit">Grit to begin sanding with.</param>
/// <param name="EndGrit">Grit to end with.</param>
/// <param name="Hours">Hours from the label, by what has to pass: a key of <see cref="WorkLists.Hours"/>.</param>
/// <param name="Version">Of the work when it was read.</param>
public sealed record ChoiceTexts(
    Guid ProjectId,
    WorkChoices Choices,
    string Edges,
    string Use,
    string Coats,
    string StartGrit,
    string EndGrit,
    ImmutableSortedDictionary<string, string> Hours,
    int Version
);

/// <summary>Keeps the order of work of projects: worked out from the design as it stands, with what the builder did and wrote
/// kept by each step's id, so that it outlives a change of sizes.</summary>
public interface IWorkService
{
    /// <summary>The order of work; null where the project is gone.</summary>
    Task<WorkView?> GetAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Marks a step as done, as left out, or as still open. Marked as done again, it was done as it reads now.</summary>
    Task<Outcome<WorkView>> MarkAsync(
        Guid projectId,
        string stepId,
        StepMark mark,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Moves a step before or after its neighbor on a page. Refused, with the reason, where one of the two has to be
    /// done before the other.</summary>
    Task<Outcome<WorkView>> MoveAsync(
        Guid projectId,
        string stepId,
        WorkPage page,
        bool up,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Adds a step of the builder's own behind the last one of a page.</summary>
    /// <param name="projectId">The project.</param>
    /// <param name="page">Where it belongs.</param>
    /// <param name="title">A few words.</param>
    /// <param name="says">What to do, a line each; may be empty.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<WorkView>> AddStepAsync(
        Guid projectId,
        WorkPage page,
        string title,
        string says,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Removes a step of the builder's own, or what was kept for a step that is no longer there.</summary>
    Task<Outcome<WorkView>> RemoveAsync(Guid projectId, string stepId, CancellationToken cancel = default);

    /// <summary>The texts of a step; null where there is no such step.</summary>
    Task<StepTexts?> TextsAsync(Guid projectId, string stepId, CancellationToken cancel = default);

    /// <summary>Writes a step's note, whatever stood there: of one sender's notes on a step the latest holds.</summary>
    Task<Outcome<WorkView>> NoteAsync(
        Guid projectId,
        string stepId,
        string note,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Logs how long a step took, whatever stood there; an empty text removes it.</summary>
    Task<Outcome<WorkView>> TookAsync(
        Guid projectId,
        string stepId,
        string took,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Logs how long a session at the saw took.</summary>
    /// <param name="projectId">The project.</param>
    /// <param name="took">As typed.</param>
    /// <param name="cutSoFar">Minutes, as estimated, for all that is cut by now: what earlier sessions do not account for is what
    /// was cut in this one.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<WorkView>> AddCuttingTimeAsync(
        Guid projectId,
        string took,
        int cutSoFar,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Returns how long work took, in all projects, oldest first.</summary>
    Task<ImmutableArray<WorkLog>> LogsAsync(CancellationToken cancel = default);

    /// <summary>Saves a step's texts; a conflict when the version is not the one stored.</summary>
    Task<Outcome<StepTexts>> SaveTextsAsync(StepTexts texts, CancellationToken cancel = default);

    /// <summary>What was decided, as texts; null where the project is gone.</summary>
    Task<ChoiceTexts?> ChoicesAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Saves what is decided; a conflict when the version is not the one stored.</summary>
    Task<Outcome<ChoiceTexts>> SaveChoicesAsync(ChoiceTexts texts, CancellationToken cancel = default);

    /// <summary>Puts what the finish takes on the project's shopping list. What is there already stays, at the amount that it
    /// takes now where this program put it there and it is not bought yet.</summary>
    Task<Outcome<WorkView>> ListFinishAsync(Guid projectId, string device, CommandId command, CancellationToken cancel = default);

    /// <summary>Takes the last change back; a conflict when the version is not the one stored.</summary>
    Task<Outcome<WorkView>> UndoAsync(Guid projectId, int version, CancellationToken cancel = default);

    /// <summary>Does the last change taken back again.</summary>
    Task<Outcome<WorkView>> RedoAsync(Guid projectId, int version, CancellationToken cancel = default);
}
