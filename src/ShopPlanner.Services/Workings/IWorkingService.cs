using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Workings;

/// <summary>A working that is kept with a project, so that a figure can be looked up and worked out again.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="ProjectId">The project.</param>
/// <param name="Form">Name of the form.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Given">Texts by key, as they were typed.</param>
/// <param name="Unit">Of texts without a suffix.</param>
/// <param name="Result">The main figure in one line, as it was when it was kept.</param>
/// <param name="KeptUtc">When.</param>
public sealed record KeptWorking(
    Guid Id,
    Guid ProjectId,
    string Form,
    string Title,
    ImmutableSortedDictionary<string, string> Given,
    LengthUnit Unit,
    string Result,
    DateTime KeptUtc
);

/// <summary>What keeping a working did.</summary>
/// <param name="Working">The working.</param>
/// <param name="Parts">How many rows were added to the project's parts list; their material is still to be chosen.</param>
/// <param name="Step">The step of the parts list that added them; null where there were none.</param>
public sealed record KeptUse(KeptWorking Working, int Parts, Guid? Step);

/// <summary>Keeps workings with projects. Each change is one transaction.</summary>
public interface IWorkingService
{
    /// <summary>Most workings of one project.</summary>
    const int MostKept = 200;

    /// <summary>A project's workings, the latest first; none where the project is gone.</summary>
    Task<IReadOnlyList<KeptWorking>> ListAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Works the form out and keeps it with the project; parts that it proposes become rows of the parts list, as one
    /// step to undo. Faulty where the form finds a fault in what is given, its field being the key.</summary>
    Task<Outcome<KeptUse>> KeepAsync(
        Guid projectId,
        string form,
        IReadOnlyDictionary<string, string> given,
        LengthUnit unit,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Takes back what <see cref="KeepAsync"/> did, the rows too; a conflict, and nothing taken back, where the parts
    /// list was changed since.</summary>
    Task<Outcome<KeptWorking>> UndoAsync(KeptUse use, CancellationToken cancel = default);

    /// <summary>Takes a working out; parts it made stay.</summary>
    Task<Outcome<KeptWorking>> RemoveAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Brings a working back that was taken out.</summary>
    Task<Outcome<KeptWorking>> PutBackAsync(KeptWorking working, CommandId command, CancellationToken cancel = default);
}
