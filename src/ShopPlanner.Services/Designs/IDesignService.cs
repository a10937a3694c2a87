using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Designs;

/// <summary>A design to start from.</summary>
/// <param name="Key">Finds it again: a built-in design's file name, or an own one's id.</param>
/// <param name="OwnId">An own design's id; null for a built-in one.</param>
/// <param name="Document">The design.</param>
/// <param name="SavedUtc">When an own one was saved; null for a built-in one.</param>
/// <param name="Version">Of an own one; rises by one with every save.</param>
public sealed record DesignView(string Key, Guid? OwnId, DesignDocument Document, DateTime? SavedUtc, int Version);

/// <summary>Keeps the designs that a project can be started from: those that come with the program, and the builder's
/// own.</summary>
public interface IDesignService
{
    /// <summary>Most own designs.</summary>
    const int MostOwn = 500;

    /// <summary>All designs: own ones first, the latest on top, then the built-in ones by name.</summary>
    Task<IReadOnlyList<DesignView>> ListAsync(CancellationToken cancel = default);

    /// <summary>One design, or null.</summary>
    /// <param name="key">Its <see cref="DesignView.Key"/>.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<DesignView?> GetAsync(string key, CancellationToken cancel = default);

    /// <summary>Saves a design as one more own one.</summary>
    /// <param name="document">Its name is the design's.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<DesignView>> SaveAsync(DesignDocument document, CommandId command, CancellationToken cancel = default);

    /// <summary>Puts a document in the place of an own design's; a conflict when the version is not the one stored.</summary>
    Task<Outcome<DesignView>> ReplaceAsync(Guid id, int version, DesignDocument document, CancellationToken cancel = default);

    /// <summary>Reads a design file and saves it as one more own one; a fault for each wrong member.</summary>
    /// <param name="json">UTF-8 text of the open format.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<DesignView>> ImportAsync(ReadOnlyMemory<byte> json, CommandId command, CancellationToken cancel = default);

    /// <summary>Takes an own design out; projects that were started from it keep theirs.</summary>
    Task<Outcome<DesignView>> RemoveAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Brings an own design back that was taken out.</summary>
    Task<Outcome<DesignView>> PutBackAsync(DesignView design, CommandId command, CancellationToken cancel = default);
}
