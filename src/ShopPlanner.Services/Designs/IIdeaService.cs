using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Designs;

/// <summary>A design with the values that are set for it.</summary>
/// <param name="Document">The design.</param>
/// <param name="Changed">Texts by dimension, as typed; they need not be right.</param>
public sealed record Idea(DesignDocument Document, ImmutableSortedDictionary<string, string> Changed);

/// <summary>A project's idea as stored.</summary>
/// <param name="ProjectId">The project.</param>
/// <param name="Idea">What it is to become.</param>
/// <param name="Version">Rises by one with every save.</param>
/// <param name="Undo">What undoing would take back; null when there is nothing.</param>
/// <param name="Redo">What redoing would bring again; null when there is nothing.</param>
public sealed record IdeaView(Guid ProjectId, Idea Idea, int Version, string? Undo, string? Redo);

/// <summary>What making parts did.</summary>
/// <param name="Sheet">The parts list now.</param>
/// <param name="Rows">Rows that stand for the idea's parts.</param>
/// <param name="Lettered">Rows typed by hand that got another mark: from which to which.</param>
/// <param name="Step">The step of the parts list that takes it back; null where nothing changed.</param>
public sealed record MadeParts(PartSheet Sheet, int Rows, ImmutableArray<(string From, string To)> Lettered, Guid? Step);

/// <summary>Keeps what a project is to become. Each change is one transaction and one step to undo.</summary>
public interface IIdeaService
{
    /// <summary>The project's idea; null where it has none, or the project is gone.</summary>
    Task<IdeaView?> GetAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Begins a project from a design.</summary>
    /// <param name="designKey">The design.</param>
    /// <param name="name">The project's name; the design's where empty.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<ProjectView>> BeginAsync(string designKey, string name, CommandId command, CancellationToken cancel = default);

    /// <summary>Puts a design in the place of a project's idea, or begins one; the one before can be brought back by
    /// undoing.</summary>
    Task<Outcome<IdeaView>> StartAsync(Guid projectId, string designKey, CommandId command, CancellationToken cancel = default);

    /// <summary>Saves an idea as typed, faulty or not. Changes of one title that follow each other within a few seconds are one
    /// step. A conflict when the version is not the one stored.</summary>
    /// <param name="projectId">The project.</param>
    /// <param name="idea">As it is to be.</param>
    /// <param name="version">With which it was read.</param>
    /// <param name="title">What changed, for the undo button.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<IdeaView>> SaveAsync(Guid projectId, Idea idea, int version, string title, CancellationToken cancel = default);

    /// <summary>Takes the last step back; a conflict when the version is not the one stored.</summary>
    Task<Outcome<IdeaView>> UndoAsync(Guid projectId, int version, CancellationToken cancel = default);

    /// <summary>Does the last step taken back again.</summary>
    Task<Outcome<IdeaView>> RedoAsync(Guid projectId, int version, CancellationToken cancel = default);

    /// <summary>Returns what making parts would change in the project's parts list now; null where the project has no idea, or
    /// one that cannot be worked out.</summary>
    Task<PartsUpdate?> CompareAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Writes the idea's parts into the project's parts list, under the marks of the drawing. Rows made before are
    /// changed or taken out, but for what a person changed in them; rows typed by hand stay. Faulty where the idea cannot be
    /// worked out, or a row typed by hand has a mark of the drawing and may not get another.</summary>
    /// <param name="projectId">The project.</param>
    /// <param name="mayLetter">True where rows typed by hand may get other marks.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<MadeParts>> MakePartsAsync(
        Guid projectId,
        bool mayLetter,
        CommandId command,
        CancellationToken cancel = default
    );
}
