using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Projects;

/// <summary>A row of a project's parts list, as typed: what cannot be read yet is kept and marked, never dropped.</summary>
/// <param name="Id">Never changes; made by the page for a new row.</param>
/// <param name="Mark">The part's letter, e.g. <c>A</c>.</param>
/// <param name="Name">E.g. <c>Leg</c>.</param>
/// <param name="Material">The material's id, or what was typed for it (its name is understood too).</param>
/// <param name="Length">As typed.</param>
/// <param name="Width">As typed; empty for a board part of full width.</param>
/// <param name="Quantity">As typed.</param>
/// <param name="CanTurn">True when the grain does not matter (sheets only).</param>
/// <param name="Note">Free text.</param>
public sealed record PartTexts(
    Guid Id,
    string Mark,
    string Name,
    string Material,
    string Length,
    string Width,
    string Quantity,
    bool CanTurn,
    string Note
)
{
    /// <summary>How much longer than <see cref="Length"/> it is cut, to be trimmed later, as typed; empty for nothing.</summary>
    public string LongBy { get; init; } = "";

    /// <summary>How much wider than <see cref="Width"/> it is cut, to be trimmed later, as typed; empty for nothing.</summary>
    public string WideBy { get; init; } = "";

    /// <summary>How many practice pieces like it are cut beside it, as typed; empty for none.</summary>
    public string Practice { get; init; } = "";
}

/// <summary>A row as stored.</summary>
/// <param name="Texts">As typed.</param>
/// <param name="Part">What it means, its id being the mark; null while it has faults.</param>
/// <param name="MaterialName">What people call the material; the text typed when it is unknown.</param>
/// <param name="Faults">What is wrong, each naming the member of <see cref="PartTexts"/>.</param>
/// <param name="Version">Rises by one with every save.</param>
public sealed record PartRow(PartTexts Texts, CutPart? Part, string MaterialName, ImmutableArray<Fault> Faults, int Version)
{
    /// <summary>Practice pieces wanted beside the part's own; zero while the row has faults.</summary>
    public int Practice { get; init; }
}

/// <summary>A project's parts list.</summary>
/// <param name="ProjectId">The project.</param>
/// <param name="Unit">Of texts without a suffix.</param>
/// <param name="Rows">In the user's order.</param>
/// <param name="Undo">What undoing would take back, e.g. <c>paste of 12 rows</c>; null when there is nothing.</param>
/// <param name="Redo">What redoing would bring again; null when there is nothing.</param>
public sealed record PartSheet(Guid ProjectId, LengthUnit Unit, ImmutableArray<PartRow> Rows, string? Undo, string? Redo)
{
    /// <summary>The step that <see cref="Undo"/> names; null when there is nothing.</summary>
    public Guid? UndoStep { get; init; }

    /// <summary>The step that <see cref="Redo"/> names; null when there is nothing.</summary>
    public Guid? RedoStep { get; init; }
}

/// <summary>A row to save. <paramref name="Version"/> is the one it was read with; null for a new row.</summary>
/// <param name="Texts">As typed.</param>
/// <param name="Version">See above.</param>
/// <param name="Before">The row it is put before when new; null for the end.</param>
public sealed record PartEdit(PartTexts Texts, int? Version, Guid? Before = null);

/// <summary>Keeps a project's parts; every change is one transaction and one step to undo.</summary>
public interface IPartService
{
    /// <summary>Most rows of one parts list.</summary>
    const int MaxRows = 5_000;

    /// <summary>The parts list, or null when the project is gone.</summary>
    Task<PartSheet?> GetAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Saves rows as typed, faulty ones too; an empty mark becomes the next free letter. A conflict has a fault for each
    /// row whose version is not the one stored, its field being the row's id and its value what stands there now. New rows carry
    /// ids of their own, so the same rows sent twice are added once.</summary>
    Task<Outcome<PartSheet>> SaveAsync(Guid projectId, IReadOnlyList<PartEdit> edits, CancellationToken cancel = default);

    /// <summary>Takes rows out.</summary>
    Task<Outcome<PartSheet>> RemoveAsync(Guid projectId, IReadOnlyList<Guid> rows, CancellationToken cancel = default);

    /// <summary>Reads rows copied from a spreadsheet (tabs, or commas when there is no tab; a heading row is understood: mark,
    /// name, material, length, width, quantity, grain, note, long, wide, practice; without one that order is meant, and the last
    /// ones may be missing) and adds them at the end. Refused whole, with one fault, when there are more than <see
    /// cref="MaxRows"/>.</summary>
    Task<Outcome<PartSheet>> PasteAsync(Guid projectId, string text, CommandId command, CancellationToken cancel = default);

    /// <summary>Adds the parts of a cut request (<c>shop-planner/cut-request</c>) at the end, as typed. Refused whole, with a
    /// fault for each member that is wrong.</summary>
    Task<Outcome<PartSheet>> ImportAsync(
        Guid projectId,
        ReadOnlyMemory<byte> request,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Takes the last step back. A conflict, with the reason, when another device changed the same rows since.</summary>
    Task<Outcome<PartSheet>> UndoAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Takes the step back that the page shows as <see cref="PartSheet.UndoStep"/>; a conflict when it is not the last
    /// one any more, so that nobody takes back what another device did meanwhile.</summary>
    Task<Outcome<PartSheet>> UndoAsync(Guid projectId, Guid step, CancellationToken cancel = default);

    /// <summary>Does the last step taken back again.</summary>
    Task<Outcome<PartSheet>> RedoAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Does the step again that the page shows as <see cref="PartSheet.RedoStep"/>; a conflict when it is another
    /// now.</summary>
    Task<Outcome<PartSheet>> RedoAsync(Guid projectId, Guid step, CancellationToken cancel = default);
}
